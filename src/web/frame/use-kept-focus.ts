import { useEffect } from 'react';

const focusable = 'a[href], button:enabled, input:enabled, select:enabled, textarea:enabled, summary';

/**
 * Keeps the place of whoever works by keys. Browsers drop the focus when what has it is switched off while it is carried
 * out, or leaves the page with the form it closes: it goes back to the same thing, else into the form that took its place,
 * else to what is left of its entry or section.
 */
export function useKeptFocus(): void {
  useEffect(() => {
    let byKeys = false;
    let last: HTMLElement | undefined;
    let around: Element[] = [];
    const onKey = () => {
      byKeys = true;
    };
    const onPointer = () => {
      byKeys = false;
    };
    const onFocus = ({ target }: FocusEvent) => {
      // A dialog gives the focus back by itself.
      if (!(target instanceof HTMLElement) || target.closest('[role="dialog"]')) return;
      last = target;
      around = ['li', 'section', 'main'].flatMap((part) => target.closest(part) ?? []);
    };
    const observer = new MutationObserver(() => {
      if (!byKeys || !last || document.activeElement !== document.body) return;
      if (last.isConnected) {
        if (!last.matches(':disabled')) last.focus({ preventScroll: true });
        return;
      }
      const left = around.find((part): part is HTMLElement => part.isConnected);
      const next = left?.matches('main') ? left : (firstIn(left, 'form') ?? firstIn(left, ''));
      next?.focus();
    });
    document.addEventListener('keydown', onKey, true);
    document.addEventListener('pointerdown', onPointer, true);
    document.addEventListener('focusin', onFocus);
    observer.observe(document.body, {
      ...{ subtree: true, childList: true },
      attributeFilter: ['disabled'],
    });
    return () => {
      document.removeEventListener('keydown', onKey, true);
      document.removeEventListener('pointerdown', onPointer, true);
      document.removeEventListener('focusin', onFocus);
      observer.disconnect();
    };
  }, []);
}

function firstIn(part: Element | undefined, inside: string): HTMLElement | null | undefined {
  return part?.querySelector<HTMLElement>(`:scope ${inside} :is(${focusable})`);
}
