import { PNG } from 'pngjs';
import { type Page, pointsPerMillimetre } from './pdf-pages.js';

/** The symbols drawn on a page, each as a picture of what its rectangles cover, 0.05 mm a dot. */
export function symbolsOn(page: Page): Buffer[] {
  const dotsPerPoint = 20 / pointsPerMillimetre;
  const quietDots = 40;
  return page.content
    .split(/\nf\n/)
    .map((part) => [...part.matchAll(/^([\d.-]+) ([\d.-]+) ([\d.-]+) ([\d.-]+) re$/gm)])
    .filter((rectangles) => rectangles.length > 0)
    .map((rectangles) => {
      const boxes = rectangles.map((found) => found.slice(1).map((number) => Number(number) * dotsPerPoint));
      const edge = (pick: (box: number[]) => number, of: (...values: number[]) => number) =>
        of(...boxes.map(pick));
      const left = edge(([x = 0]) => x, Math.min);
      const top = edge(([, y = 0]) => y, Math.min);
      const picture = new PNG({
        width: Math.ceil(edge(([x = 0, , width = 0]) => x + width, Math.max) - left) + 2 * quietDots,
        height: Math.ceil(edge(([, y = 0, , height = 0]) => y + height, Math.max) - top) + 2 * quietDots,
      });
      picture.data.fill(255);
      for (const [x = 0, y = 0, width = 0, height = 0] of boxes) {
        for (let row = Math.round(y - top); row < Math.round(y - top + height); row += 1) {
          for (let column = Math.round(x - left); column < Math.round(x - left + width); column += 1) {
            const at = ((row + quietDots) * picture.width + column + quietDots) * 4;
            picture.data.fill(0, at, at + 3);
          }
        }
      }
      return PNG.sync.write(picture);
    });
}
