/** A drop in a corner that guards it: the sign of Lotward. */
export function Mark({ size = 32 }: { size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 32 32" aria-hidden="true" focusable="false">
      <path
        d="M7 4.5v18.5a5 5 0 0 0 5 5h13"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.6"
        strokeLinecap="round"
      />
      <path d="M19.5 6.5c3 3.7 4.7 6.3 4.7 8.6a4.7 4.7 0 0 1-9.4 0c0-2.3 1.7-4.9 4.7-8.6Z" fill="#d98f6c" />
    </svg>
  );
}
