import type { ReactNode } from 'react';

/** A table that may be wider than the screen: it scrolls in its own place, by finger and by key. */
export function WideTable({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by key
    <section className="wide-table" tabIndex={0} aria-label={label}>
      <table>{children}</table>
    </section>
  );
}
