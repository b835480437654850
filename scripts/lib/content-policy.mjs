/**
 * No script but our own files may run, and nothing may be sent anywhere else. 'wasm-unsafe-eval' admits the solver.
 * A static host sets no headers for us, so the built page says it itself; our own server says it in a header too.
 */
export const contentPolicy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "font-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "form-action 'none'",
  "base-uri 'none'",
].join('; ');
