/** Holds what the document shows of a picture. */

export const SVG_EXAMPLE =
  '<svg xmlns="http://www.w3.org/2000/svg" role="img" width="720" height="600" viewBox="0 0 720 600"></svg>';
