import options from '../../../../demo/plan-options.json';

const DEMO_KEY = 'winterheft-demo';

/** Whether this page walks in the demo holding, which has a database of its own. */
export const isDemo = stored() !== null;

/** The day on which the demo holding's round has just been made; its plan is for that day. */
export const DEMO_DAY: string = options[options.indexOf('--today') + 1] as string;

export function setDemo(on: boolean): void {
  if (on) sessionStorage.setItem(DEMO_KEY, '1');
  else sessionStorage.removeItem(DEMO_KEY);
}

function stored(): string | null {
  try {
    return sessionStorage.getItem(DEMO_KEY);
  } catch {
    return null;
  }
}

/** The demo holding has a database of its own. */
export const databaseName = isDemo ? 'winterheft-demo' : 'winterheft';
