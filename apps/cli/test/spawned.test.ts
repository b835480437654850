import { execFile, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { commands } from '../src/commands.ts';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const BIN = fileURLToPath(new URL('../bin/winterheft.mjs', import.meta.url));

beforeAll(() => promisify(execFile)(process.execPath, ['scripts/build-cli.mjs'], { cwd: root }));

/** A real process, as a script of somebody else would start it. */
function shell(line: string): Promise<{ readonly code: number | null; readonly out: string; readonly err: string }> {
  return new Promise((resolve, reject) => {
    const child = spawn('sh', ['-c', line], { cwd: root, stdio: ['ignore', 'pipe', 'pipe'] });
    let out = '';
    let err = '';
    child.stdout.on('data', (part) => {
      out += part;
    });
    child.stderr.on('data', (part) => {
      err += part;
    });
    child.on('error', reject);
    child.on('close', (code) => resolve({ code, out, err }));
  });
}

describe('the built command', () => {
  test.each(commands.map((command) => [command.name, command.example] as const))(
    '%s: the example of its help runs as printed',
    async (_name, example) => {
      const { code, out, err } = await shell(example);
      expect([code, err]).toEqual([0, '']);
      expect(out.trimEnd().split('\n').length).toBeGreaterThanOrEqual(2);
    },
  );

  test('bad input: exit 2, one line on standard error, nothing on standard output', async () => {
    const { code, out, err } = await shell(`echo '{"bees":300}' | node '${BIN}' wash -`);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(/^winterheft: mites is missing; allowed: .*\n$/);
  });

  test('a reader that stops early is no error', async () => {
    const { err } = await shell(`node '${BIN}' weather --places | head -n 1`);
    expect(err).toBe('');
    expect((await shell(`node '${BIN}' weather --places --json | true`)).err).toBe('');
  });

  test('two processes give the same bytes', async () => {
    const line = `node '${BIN}' weather --place 'The Pas MB' --json`;
    expect((await shell(line)).out).toBe((await shell(line)).out);
  });

  test('the model as LP text goes to standard output', async () => {
    const example = commands.find((command) => command.name === 'provision')!.example;
    const first = await shell(`${example} --lp`);
    expect([first.code, first.err]).toEqual([0, '']);
    expect(first.out).toMatch(/^[\s\S]*Minimize[\s\S]*Subject To[\s\S]*End\s*$/i);
    const second = await shell(`${example} --lp --rank 2`);
    expect([second.code, second.err]).toEqual([0, '']);
    expect(second.out).not.toBe(first.out);
    const none = await shell(`${example} --lp --rank 9`);
    expect([none.code, none.out]).toEqual([2, '']);
    expect(none.err).toMatch(/--rank is 9; allowed: 1 to/);
  });
});
