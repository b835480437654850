import { spawn } from 'node:child_process';
import { createServer } from 'node:http';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

function node(args, env = {}) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: root, env: { ...process.env, ...env }, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let err = '';
    child.stdout.on('data', (part) => {
      out += part;
    });
    child.stderr.on('data', (part) => {
      err += part;
    });
    child.on('close', (code) => resolve({ code, out, err }));
  });
}

/** A port nobody uses just now. */
function freePort() {
  return new Promise((resolve) => {
    const server = createServer().listen(0, 'localhost', () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

test('an old Node is told what is needed, in one sentence, with exit code 1', async () => {
  const code =
    "Object.defineProperty(process, 'versions', { value: { node: '18.20.4' } }); import('./scripts/lib/node-version.mjs').then((m) => m.requireNode());";
  const ran = await node(['-e', code]);
  expect(ran.code).toBe(1);
  expect(ran.err).toMatch(/^Winterheft needs Node 20\.19 or newer; this is Node 18\.20\.4\..*\n$/);
});

test.each(['20.19.0', '20.20.2', '21.0.0', '22.1.0', '24.0.0'])('Node %s is new enough', async (version) => {
  const code = `Object.defineProperty(process, 'versions', { value: { node: '${version}' } }); import('./scripts/lib/node-version.mjs').then((m) => m.requireNode());`;
  expect(await node(['-e', code])).toEqual({ code: 0, out: '', err: '' });
});

test('--once prints the table and ends; --once --json gives the same figures', async () => {
  const [table, json] = await Promise.all([node(['scripts/start.mjs', '--once']), node(['scripts/start.mjs', '--once', '--json'])]);
  expect([table.code, json.code]).toEqual([0, 0]);
  const plan = JSON.parse(json.out);
  const rows = table.out.split('\n');
  expect(plan.outlooks.length).toBeGreaterThanOrEqual(26);
  for (const { label, needKg, hasKg, hasSdKg } of plan.outlooks) {
    const row = rows.find((one) => one.startsWith(`${label} `));
    expect(row, label).toContain((needKg / 0.45359237).toFixed(1));
    if (hasKg !== null) expect(row, label).toMatch(new RegExp(`${(hasKg / 0.45359237).toFixed(1)} ± ${(hasSdKg / 0.45359237).toFixed(1)}`));
  }
  for (const row of rows) expect([...row].length, row).toBeLessThanOrEqual(110);
  const steps = rows.filter((row) => /^ *\d+\. /.test(row));
  expect(steps.length).toBe(plan.provision.order.length);
});

test('a port that is taken is told in one sentence, with exit code 1, before anything is installed, built or printed', async () => {
  const port = await freePort();
  const server = createServer();
  await new Promise((resolve) => server.listen(port, 'localhost', resolve));
  try {
    const taken = await node(['scripts/start.mjs'], { PORT: String(port) });
    expect([taken.code, taken.out]).toEqual([1, '']);
    expect(taken.err).toMatch(new RegExp(`^Port ${port} is taken by another program\\..*PORT=.*\\n$`));
  } finally {
    await new Promise((resolve) => server.close(resolve));
  }
});

test.each(['0', '65536', 'eighty', '-1', '80.5', '0x50'])('PORT=%s is refused before anything is installed', async (port) => {
  const ran = await node(['scripts/start.mjs'], { PORT: port });
  expect([ran.code, ran.out]).toEqual([2, '']);
  expect(ran.err).toBe(`PORT is "${port}"; allowed: a whole number from 1 to 65535\n`);
});

test('an unknown option is refused', async () => {
  const ran = await node(['scripts/start.mjs', '--twice']);
  expect(ran.code).toBe(2);
  expect(ran.err).toMatch(/--twice is not an option; allowed: --once, --json/);
});
