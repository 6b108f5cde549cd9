// A drawing as SVG: the same bytes, numbers to the thousandth, every sign escaped.
import { describe, expect, it } from 'vitest';
import { type Drawing, type Mark, measureText, toSvg, wrapText } from '../../src/pictures/index.ts';

const drawing = (marks: readonly Mark[], more: Partial<Drawing> = {}): Drawing => ({
  id: 'it',
  widthMm: 10,
  heightMm: 20,
  title: 'A & B',
  description: 'Row 1: <open>',
  language: 'en',
  marks,
  ...more,
});

describe('a drawing as SVG', () => {
  it('is in millimetres and says what it is to those who cannot see it', () => {
    const svg = toSvg(drawing([]));
    expect(svg).toContain('width="10mm" height="20mm" viewBox="0 0 10 20"');
    expect(svg).toContain('role="img" aria-labelledby="it-title it-desc"');
    expect(svg).toContain('<title id="it-title">A &amp; B</title>');
    expect(svg).toContain('<desc id="it-desc">Row 1: &lt;open&gt;</desc>');
  });

  it('rounds to a thousandth and writes no "-0"', () => {
    const svg = toSvg(
      drawing([
        {
          kind: 'line',
          from: [1 / 3, -0.0001],
          to: [2, 1e-7],
          stroke: { ink: 'ink', widthMm: 0.1 },
        },
      ]),
    );
    expect(svg).toContain(
      '<line x1="0.333" y1="0" x2="2" y2="0" stroke="#1a1a1a" stroke-width="0.1"',
    );
  });

  it('leads back to the words: id and span', () => {
    const svg = toSvg(
      drawing([
        {
          kind: 'circle',
          id: 'r1b2',
          origin: { from: 7, to: 8 },
          title: 'Row 1',
          centre: [1, 1],
          radiusMm: 1,
        },
      ]),
    );
    expect(svg).toContain(
      '<circle id="it-r1b2" data-from="7" data-to="8" cx="1" cy="1" r="1"><title>Row 1</title></circle>',
    );
  });

  it('has no sign that XML forbids, whatever a name holds', () => {
    const svg = toSvg(drawing([], { title: 'a\u0000b\ud800c\uffff"' }));
    expect(svg).toContain('>a\ufffdb\ufffdc\ufffd&quot;<');
  });

  it('moves, clips and styles what stands in a group', () => {
    const inner: Mark = { kind: 'rect', at: [0, 0], widthMm: 1, heightMm: 1 };
    const clip = { at: [0, 0], widthMm: 5, heightMm: 5 } as const;
    const svg = toSvg(drawing([{ kind: 'group', at: [1, 2], clip, fill: 'soft', marks: [inner] }]));
    expect(svg).toContain(
      '<clipPath id="it-clip-1"><rect x="0" y="0" width="5" height="5"/></clipPath>',
    );
    expect(svg).toContain(
      '<g transform="translate(1 2)" clip-path="url(#it-clip-1)" fill="#595959">',
    );
  });
});

describe('room for words', () => {
  it('takes widths from the face', () => {
    expect(measureText('AV', 1000)).toBe(543 + 515);
    expect(measureText('é', 1000)).toBe(measureText('e', 1000));
    expect(measureText('A', 1000, 'bold')).toBe(573);
  });

  it('breaks between words', () => {
    expect(wrapText('one two three', measureText('one two', 3), { sizeMm: 3 })).toEqual([
      'one two',
      'three',
    ]);
    expect(wrapText('  ', 10, { sizeMm: 3 })).toEqual([]);
  });
});
