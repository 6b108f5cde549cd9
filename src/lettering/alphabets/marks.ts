/**
 * Accents, as grids to set over or under a letter. A mark stands in the middle, so there is one for
 * letters of even width, one for odd, and where that is wide one for narrow letters. Drawn for filet by us.
 */

/** Each block: combining sign in hexadecimal, `e`, `o` or `n` for even, odd or narrow, then the rows. */
export const MARKS: string = `
300e 300o 301e 301o 302e 302o  303o  304e 304o  306e 306o 307e 307o 308e 308o
##.. ##.  ..## .##  .##. .###. ###.# #### ##### #..# #.#  ##   #    #..# #.#
.### .##  ###. ##.  #### ##.## #.### .... ..... #### ###  ..   #    .... ...

30Ae 30Ao 30Be 30Bo 30Ce 30Co
.... ###  .... ...  .... .....
#### #.#  .... ...  .... .....
#..# #.#  #..# #.#  #### ##.##
#### ###  #..# #.#  .##. .###.

326o 327o 328o 302n 304n 30Cn
.    .#   #.   .#.  ###  ###
#    ##   ##   ###  ###  .#.
#    ..   ..   ...  ...  ...
`;

/** The same for strokes of two boxes. */
export const BROAD_MARKS: string = `
300e  300o 301e  301o 302e   302o  303o    304e 304o  306e 306o  307e 307o 308e   308o
##..  ###. ..##  .### .####. .###. ####.## #### ##### #..# #...# ##   ###  ##..## ##.##
.###  .### ###.  ###. ##..## ##.## ##.#### .... ..... #### ##### ##   ###  ##..## ##.##

30Ae 30Ao 30Bo    30Ce   30Co
.... ###  ....... ...... .....
#### #.#  ....... ...... .....
#..# #.#  .##..## ##..## ##.##
#### ###  ##..##. .####. .###.

326o 327e 328o
..   ##.  ##.
##   .##  .##
#.   ##.  ...
`;
