/** The one function used of jstat 1.9.6, which ships no types. */
declare module 'jstat' {
  const jstat: { readonly beta: { inv(p: number, alpha: number, beta: number): number } };
  export default jstat;
}
