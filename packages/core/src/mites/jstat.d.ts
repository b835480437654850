/** The functions used of jstat 1.9.6, which ships no types. */
declare module 'jstat' {
  const jstat: {
    readonly beta: { inv(p: number, alpha: number, beta: number): number; cdf(x: number, alpha: number, beta: number): number };
    readonly gamma: { inv(p: number, shape: number, scale: number): number };
    gammaln(x: number): number;
  };
  export default jstat;
}
