/** What kind of token each sign makes: typographic variants of a sign fall together. */
import { T } from './tokens.ts';

/** Kind of token of a sign beside its value, packed as kind * 256 + value. */
export function signOf(code: number): number {
  switch (code) {
    case 44:
    case 0xff0c:
    case 0x3001:
      return T.comma << 8;
    case 59:
    case 0xff1b:
      return T.semicolon << 8;
    case 46:
    case 33:
    case 63:
    case 0x2026:
    case 0x3002:
      return (T.stop << 8) | 1;
    case 58:
    case 0xff1a:
      return T.colon << 8;
    case 40:
    case 0xff08:
      return (T.open << 8) | 40;
    case 91:
    case 0xff3b:
    case 0x3010:
      return (T.open << 8) | 91;
    case 123:
      return (T.open << 8) | 123;
    case 41:
    case 0xff09:
      return (T.close << 8) | 40;
    case 93:
    case 0xff3d:
    case 0x3011:
      return (T.close << 8) | 91;
    case 125:
      return (T.close << 8) | 123;
    case 42:
    case 0x2217:
    case 0x2733:
    case 0xff0a:
    case 0x2605:
    case 0x2606:
      return (T.star << 8) | 1;
    case 0x2020:
      return (T.star << 8) | 11;
    case 0x2021:
      return (T.star << 8) | 12;
    case 0xb0:
    case 0x25ca:
    case 0x2666:
    case 0xa7:
      return (T.star << 8) | 13;
    case 45:
    case 0x2010:
    case 0x2011:
    case 0x2012:
    case 0x2013:
    case 0x2014:
    case 0x2015:
    case 0x2212:
    case 126:
    case 0xfe63:
    case 0xff0d:
      return T.dash << 8;
    case 61:
    // Arrows: "in each st → 47".
    case 0x2192:
    case 0x21d2:
    case 0x279c:
    case 0xff1d:
      return T.equals << 8;
    case 43:
    case 0xff0b:
      return T.plus << 8;
    case 47:
    case 0xff0f:
      return T.slash << 8;
    case 0xd7:
    case 0x2715:
    case 0x2716:
    case 0x2a2f:
      return T.times << 8;
    case 124:
    case 0xff5c:
      return T.pipe << 8;
    case 38:
      return T.word << 8;
    default:
      return T.other << 8;
  }
}
