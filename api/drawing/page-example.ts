/** Holds what the document shows of a page. */

export const PAGE_EXAMPLE =
  '<!DOCTYPE html><html lang="en" dir="ltr"><head><meta charset="utf-8"><title>Kelp flume: pump report</title></head><body></body></html>';
