/** Line icons on a grid of 24, 3 px stroke, square ends. Words stay beside all but delete, up, down and tick. */
const PATHS = {
  up: 'M4 16 12 8l8 8',
  down: 'm4 8 8 8 8-8',
  next: 'M3 12h16M13 5l7 7-7 7',
  back: 'M21 12H5M11 5l-7 7 7 7',
  tick: 'm4 13 5.5 5.5L21 6',
  delete: 'M8 5h14v14H8l-6-7zM12 9l6 6M18 9l-6 6',
  file: 'M5 3h9l5 5v13H5zM14 3v5h5',
  into: 'M12 3v12M6 10l6 6 6-6M3 21h18',
  out: 'M12 17V5M6 10l6-6 6 6M3 21h18',
  sun: 'M12 8a4 4 0 1 0 .01 0M12 1v4M12 19v4M1 12h4M19 12h4M4.2 4.2 7 7M17 17l2.8 2.8M4.2 19.8 7 17M17 7l2.8-2.8',
  sound: 'M3 9v6h4l6 5V4L7 9zM17 8c2 2 2 6 0 8',
  print: 'M6 9V3h12v6M6 18H3V9h18v9h-3M6 14h12v7H6z',
  scan: 'M3 8V3h5M16 3h5v5M21 16v5h-5M8 21H3v-5M8 8h3v3H8zM14 14h2v2h-2zM14 8h2',
} as const;

export type IconName = keyof typeof PATHS;

export function Icon({ name, size = 24 }: { readonly name: IconName; readonly size?: number }) {
  return (
    <svg className="icon" viewBox="0 0 24 24" width={size} height={size} aria-hidden="true">
      <path d={PATHS[name]} />
    </svg>
  );
}

/** The lifted box: the way to all places. */
export function LiftedBox() {
  return (
    <svg className="lifted-box" viewBox="0 0 44 36" width="44" height="36" aria-hidden="true">
      <g transform="rotate(-11 5 29)">
        <path d="M6 8h27v20H6z" className="lifted-box-body" />
      </g>
      <path d="M2 32.5h40" className="lifted-box-line" />
    </svg>
  );
}

/** ● everything has a copy, ○ something has not. */
export function CopiedMark({ copied }: { readonly copied: boolean }) {
  return (
    <svg className="copied-mark" viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
      {copied ? (
        <circle cx="6" cy="6" r="5" fill="currentColor" />
      ) : (
        <circle cx="6" cy="6" r="4.4" fill="none" stroke="currentColor" strokeWidth="2.2" />
      )}
    </svg>
  );
}

/** The word mark: the name over its own line, the second line hinged and raised. Drawn with text, so that it follows the font. */
export function WordMark() {
  return (
    <span className="word-mark">
      <span aria-hidden="true">winterheft</span>
      <svg viewBox="0 0 186 10" aria-hidden="true" preserveAspectRatio="none">
        <path d="M0 8.4h186" className="word-mark-level" />
        <path d="M116 6.2 186 1.4" className="word-mark-lifted" />
      </svg>
    </span>
  );
}
