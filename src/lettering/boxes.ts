/** A field of boxes, open or filled: what letters, borders and traced pictures are made of. */

/** Rows from the top, columns from the left; `filled[row * width + column]` is 1 where filled. */
export interface Boxes {
  readonly width: number;
  readonly height: number;
  readonly filled: Uint8Array;
}

/** A field of open boxes; its maker may fill some before handing it on. */
export function openBoxes(width: number, height: number): Boxes {
  return { width, height, filled: new Uint8Array(width * height) };
}

/** From rows of signs, `#` filled and any other open; rows shorter than the first end open. */
export function boxesOf(rows: readonly string[]): Boxes {
  const boxes = openBoxes(rows[0]?.length ?? 0, rows.length);
  for (const [y, row] of rows.entries()) {
    for (let x = 0; x < boxes.width; x++) {
      if (row[x] === '#') boxes.filled[y * boxes.width + x] = 1;
    }
  }
  return boxes;
}

/** Whether a box is filled; outside of the field all is open. */
export function isFilled({ width, height, filled }: Boxes, x: number, y: number): boolean {
  return x >= 0 && y >= 0 && x < width && y < height && filled[y * width + x] === 1;
}

/** Fills in `onto` the boxes that are filled in `from`, its corner at `x`, `y`; what lies outside is lost. */
export function stamp(onto: Boxes, from: Boxes, x: number, y: number): void {
  for (let row = Math.max(0, -y); row < from.height && y + row < onto.height; row++) {
    for (let column = Math.max(0, -x); column < from.width && x + column < onto.width; column++) {
      if (from.filled[row * from.width + column] === 1) {
        onto.filled[(y + row) * onto.width + x + column] = 1;
      }
    }
  }
}

/** The rows as text, `#` and `.`. */
export function rowsOf({ width, height, filled }: Boxes): string[] {
  return Array.from({ length: height }, (_, y) =>
    Array.from(filled.subarray(y * width, (y + 1) * width), (box) => (box === 1 ? '#' : '.')).join(
      '',
    ),
  );
}

/** Each box made `times` boxes wide and high. */
export function enlarged(boxes: Boxes, times: number): Boxes {
  if (times === 1) return boxes;
  const large = openBoxes(boxes.width * times, boxes.height * times);
  for (let y = 0; y < large.height; y++) {
    for (let x = 0; x < large.width; x++) {
      const from = Math.floor(y / times) * boxes.width + Math.floor(x / times);
      large.filled[y * large.width + x] = boxes.filled[from]!;
    }
  }
  return large;
}
