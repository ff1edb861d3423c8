/** States the absolute roughness of pipe walls where none is entered. */

/** [m] of smooth plastic pipe: PVC and new drawn tube, 0.0015 mm in hydraulics texts. */
export const DEFAULT_ROUGHNESS = 1.5e-6;
