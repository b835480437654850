/** Size of text against the usual one, as set in the browser and in the modes: drawings keep their letters as large as the page's. */
export function textScale(): number {
  return Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / 16 || 1;
}
