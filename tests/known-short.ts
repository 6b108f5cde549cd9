/**
 * Where the program still falls short on our own fixtures, file by file. A test of a file listed here
 * must fail: when it passes, the shortfall is mended and its line is to be deleted. Most are words
 * that are not read yet (scanned text, tables, rows without labels, lists of sizes in rare signs); in
 * the planted ones a fault is found, and rows that repeat the faulty row are named beside it.
 */
export const knownShort = {
  bareTexts: ['03-filet-tray-mat.txt'],
  plantedFaults: ['00-signs-and-references', '14-shell-blanket', '66-clause-per-line-motif'],
  countsWorkedOutApart: [
    'bare/11-flat-booties.txt',
    'bare/17-thermal-potholder.txt',
    'bare/56-uk-shell-edging-blanket.txt',
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;
