// Pictures against programs that know nothing of us: a browser reads the SVG (its XML reader and its
// geometry), pngjs reads the PNG, and pixels are counted against the formula of cloth cover.
import { existsSync, readFileSync } from 'node:fs';
import { type Browser, type Page, chromium as playwright } from 'playwright-core';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { toPng } from '../../cli/raster.ts';
import { compile, drawCharts, toSvg } from '../../src/index.ts';
import { coverOf } from '../../src/pictures/filet/cover.ts';
import { previewMarks } from '../../src/pictures/filet/preview-marks.ts';
import type { Drawing } from '../../src/pictures/index.ts';

const bag = readFileSync(
  new URL('../../examples/low-tide-errand-bag.pattern.md', import.meta.url),
  'utf8',
);
const [tide] = drawCharts(compile(bag));
const [left] = drawCharts(compile(bag), { hand: 'left' });
if (!tide?.drawings[0] || !left?.drawings[0] || !tide.preview) throw new Error('Tide is not drawn');
const svg = toSvg(tide.drawings[0]);

/** The rows of Tide as the manuscript has them, from the top. */
const signs = /# filled box\n\n([.#\n]+)\n```/.exec(bag)?.[1]?.split('\n') ?? [];

const PIXELS = 10;

const pixels = (text: string): PNG => PNG.sync.read(Buffer.from(toPng(text, PIXELS)));

/** Share of pixels that are not paper, in a rectangle in mm. */
function darkness(png: PNG, box: { x: number; y: number; w: number; h: number }): number {
  let [dark, all] = [0, 0];
  const [x0, x1] = [box.x, box.x + box.w].map((mm) => Math.round(mm * PIXELS)) as [number, number];
  const [y0, y1] = [box.y, box.y + box.h].map((mm) => Math.round(mm * PIXELS)) as [number, number];
  for (let y = y0; y < y1; y++) {
    for (let x = x0; x < x1; x++) {
      const grey = png.data[(y * png.width + x) * 4] ?? 255;
      dark += (255 - grey) / 255;
      all++;
    }
  }
  return dark / all;
}

/** Debian's Chromium, or the one that CHROMIUM names; `npm test` installs it where it can. */
const browserPath = [
  process.env.CHROMIUM ?? '',
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
].find((path) => path !== '' && existsSync(path));

describe.skipIf(browserPath === undefined)('the SVG in a browser', () => {
  let browser: Browser;
  let page: Page;

  beforeAll(async () => {
    browser = await playwright.launch({
      executablePath: browserPath ?? '',
      args: ['--no-sandbox', '--disable-quic', '--no-first-run', '--disable-background-networking'],
    });
    page = await (await browser.newContext()).newPage();
  }, 60_000);
  afterAll(() => browser?.close());

  /** Boxes of the chart by id: their rectangles in mm of the drawing. */
  const rectangles = async (text: string) => {
    await page.setContent('<body style="margin:0"></body>');
    return page.evaluate(`(() => {
      const parsed = new DOMParser().parseFromString(${JSON.stringify(text)}, 'image/svg+xml');
      const fault = parsed.querySelector('parsererror')?.textContent ?? '';
      const root = document.importNode(parsed.documentElement, true);
      document.body.append(root);
      const scale = root.viewBox.baseVal.width / root.getBoundingClientRect().width;
      const all = [...root.querySelectorAll('path[id]')].filter((one) => /^tide-r\\d+-b\\d+$/.test(one.id));
      return { fault, title: root.querySelector('title').textContent, role: root.getAttribute('role'),
        texts: [...root.querySelectorAll('text')].map((one) => {
          const box = one.getBoundingClientRect();
          return { text: one.textContent, left: box.left * scale, right: box.right * scale, top: box.top * scale, bottom: box.bottom * scale };
        }),
        width: root.viewBox.baseVal.width,
        boxes: all.map((one) => { const box = one.getBoundingClientRect(); return [one.id, (box.left + box.right) / 2 * scale, box.width * scale, box.height * scale]; }) };
    })()`) as Promise<{
      fault: string;
      title: string;
      role: string;
      width: number;
      texts: { text: string; left: number; right: number; top: number; bottom: number }[];
      boxes: [string, number, number, number][];
    }>;
  };

  it('is well-formed, has a title, and every box of the manuscript', async () => {
    const seen = await rectangles(svg);
    expect(seen.fault).toBe('');
    expect(seen.title).toContain('Tide');
    expect(seen.role).toBe('img');
    expect(seen.boxes).toHaveLength(signs.join('').length);
  }, 60_000);

  it('keeps words within the drawing and off each other, in whatever face there is', async () => {
    for (const text of [svg, toSvg(left.drawings[0] as Drawing)]) {
      const { texts, width } = await rectangles(text);
      for (const one of texts) {
        expect(one.left, one.text).toBeGreaterThan(0);
        expect(one.right, one.text).toBeLessThan(width);
        for (const other of texts) {
          const isApart =
            one === other ||
            one.right <= other.left ||
            other.right <= one.left ||
            // Line boxes of type overlap by their leading; letters do not.
            Math.abs(one.bottom - other.bottom) > 2.4;
          expect(isApart, `${one.text} | ${other.text}`).toBe(true);
        }
      }
    }
  }, 60_000);

  it('places the boxes of both hands alike', async () => {
    const [one, other] = [
      await rectangles(svg),
      await rectangles(toSvg(left.drawings[0] as Drawing)),
    ];
    expect(other.boxes.map(([id]) => id)).toEqual(one.boxes.map(([id]) => id));
    for (const [i, [, x]] of one.boxes.entries()) expect(other.boxes[i]?.[1]).toBeCloseTo(x, 3);
  }, 60_000);
});

describe('the PNG', () => {
  const png = pixels(svg);
  /** From the SVG's own numbers: where the mesh lies, and the size of a box. */
  const moves = [...svg.slice(0, svg.indexOf('id="tide-mesh"')).matchAll(/<(\/?)g\b[^>]*>/g)];
  const place = openMoves(moves.map(([tag]) => tag));
  const boxAt = (id: string) => {
    const d = new RegExp(`id="tide-${id}"[^>]* d="M([\\d.-]+) ([\\d.-]+)`).exec(svg);
    return { x: Number(d?.[1]), y: Number(d?.[2]) };
  };
  const width = 4.5;
  const height = (4.5 * 8) / 7.5;

  it('is as large as the drawing', () => {
    const [, w = 0, h = 0] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.map(Number) ?? [];
    expect(Math.abs(png.width - w * PIXELS)).toBeLessThanOrEqual(1);
    expect(Math.abs(png.height - h * PIXELS)).toBeLessThanOrEqual(1);
  });

  it('has dark boxes where the manuscript fills them and light ones elsewhere', () => {
    const lowest = boxAt('r1-b1');
    let [darkest, lightest] = [0, 1];
    signs.forEach((row, fromTop) => {
      const r = signs.length - fromTop;
      [...row].forEach((sign, column) => {
        const x = place[0] + column * width;
        const y = place[1] + (lowest.y - (r - 1) * height);
        const inner = { x: x + 0.2 * width, y: y + 0.2 * height, w: 0.6 * width, h: 0.6 * height };
        const dark = darkness(png, inner);
        if (sign === '#') lightest = Math.min(lightest, dark);
        else darkest = Math.max(darkest, dark);
      });
    });
    // In greyscale, any filled box is at least three times as dark as any open one.
    expect(lightest).toBeGreaterThan(0.45);
    expect(darkest).toBeLessThan(0.15);
  });
});

/** The sum of the moves of all groups still open, the last of which is the group asked for. */
function openMoves(tags: readonly string[]): [number, number] {
  const open: [number, number][] = [];
  for (const tag of tags) {
    if (tag.startsWith('</')) open.pop();
    else {
      const [, x = '0', y = '0'] = /translate\(([\d.-]+) ([\d.-]+)\)/.exec(tag) ?? [];
      open.push([Number(x), Number(y)]);
    }
  }
  return open.reduce(([ax, ay], [bx, by]) => [ax + bx, ay + by], [0, 0]);
}

describe('the preview', () => {
  // Cover of cloth from two sets of threads: a + b - ab (handbooks, after F. T. Peirce, 1937).
  it.each([
    { boxWidthMm: 12, boxHeightMm: 12, gap: 1, yarnMm: 1 },
    { boxWidthMm: 12, boxHeightMm: 8, gap: 2, yarnMm: 0.8 },
    { boxWidthMm: 10, boxHeightMm: 14, gap: 1, yarnMm: 2.5 },
  ])('covers as much of a box as the formula says: %j', (mesh) => {
    const cells = ['open', 'open', 'open', 'filled', 'filled', 'filled'] as const;
    const drawing: Drawing = {
      id: 'cover',
      widthMm: 80,
      heightMm: 60,
      title: 'cover',
      description: '',
      language: 'en',
      marks: [{ kind: 'group', at: [4, 4], marks: previewMarks([cells, cells, cells], mesh) }],
    };
    const png = pixels(
      toSvg(drawing).replaceAll('#595959', '#000000').replaceAll('#1a1a1a', '#000000'),
    );
    const box = (column: number) => ({
      x: 4 + column * mesh.boxWidthMm,
      y: 4 + mesh.boxHeightMm,
      w: mesh.boxWidthMm,
      h: mesh.boxHeightMm,
    });
    const cover = coverOf(mesh);
    // Outlines are 0.2 mm at most, half of it beyond the yarn: that much wider, and no more.
    expect(Math.abs(darkness(png, box(1)) - cover.open)).toBeLessThan(0.03);
    expect(Math.abs(darkness(png, box(4)) - cover.filled)).toBeLessThan(0.05);
  });
});
