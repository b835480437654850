import { describe, expect, test } from 'vitest';
import { columnsOf, dayMonth, decimals, listed, placesFor, plainText, shortened, significant, unitFormat } from '../src/index.ts';

const metric = unitFormat('metric');
const us = unitFormat('us');
const ca = unitFormat('ca');

describe('figures in the units a keeper speaks', () => {
  test('100 lb are 45.359 237 kg (NIST Handbook 44, appendix C, exact)', () => {
    expect(us.mass(45.359237)).toBe('100.0 lb');
    expect(ca.mass(45.359237)).toBe('100.0 lb');
    expect(metric.mass(45.359237)).toBe('45.4 kg');
  });

  test('-40 °C is -40 °F, 100 °C is 212 °F; Canada keeps °C', () => {
    expect(us.temp(-40)).toBe('-40.0 °F');
    expect(us.temp(100)).toBe('212.0 °F');
    expect(ca.temp(-40)).toBe('-40.0 °C');
  });

  test('3.785 411 784 L are one US gallon (NIST Handbook 44, appendix C, exact); Canada keeps litres', () => {
    expect(us.volume(3.785411784)).toBe('1.0 US gal');
    expect(ca.volume(3.785411784)).toBe('3.8 L');
  });

  test('water of 1000 kg/m³ weighs 8.35 lb a US gallon (8.345 from memory)', () => {
    expect(us.density(1000)).toBe('8.35 lb/US gal');
    expect(metric.density(1000)).toBe('1000.0 kg/m³');
  });

  test('an error sets the decimals: tenths down to a tenth, whole from ten on, more below', () => {
    expect(metric.mass(20.04, 2.16)).toBe('20.0 ± 2.2 kg');
    expect(metric.mass(20.04, 12.3)).toBe('20 ± 12 kg');
    expect(metric.mass(0.1234, 0.0123)).toBe('0.12 ± 0.01 kg');
    expect([placesFor(0), placesFor(0.1), placesFor(9.99), placesFor(10)]).toEqual([1, 1, 1, 0]);
  });

  test('minus zero is zero', () => {
    expect(decimals(-0.04, 1)).toBe('0.0');
    expect(significant(0)).toBe('0');
  });

  test('small figures keep two that count', () => {
    expect(metric.mass(0.0123)).toBe('0.012 kg');
    expect(significant(0.000123456)).toBe('0.000123');
  });

  test('dates are day and month, with the year where it is asked for', () => {
    expect(dayMonth('2027-03-25')).toBe('25 Mar');
    expect(dayMonth('2027-01-01', true)).toBe('1 Jan 2027');
  });
});

describe('what somebody typed, on a terminal', () => {
  test('control and direction characters go, white space joins', () => {
    expect(plainText(' hive\u0000\u001b[31m\t7\r\n\u202eabc\u200b ')).toBe('hive [31m 7 abc');
  });

  test('a label of ten thousand letters is cut with an ellipsis', () => {
    expect(shortened('x'.repeat(10_000), 12)).toBe(`${'x'.repeat(11)}…`);
    expect(shortened('short', 12)).toBe('short');
    expect(columnsOf(shortened('漢'.repeat(10_000), 12))).toBeLessThanOrEqual(12);
    expect(columnsOf(shortened('🐝'.repeat(40), 12))).toBeLessThanOrEqual(12);
    expect(shortened('\u0000'.repeat(10_000), 12)).not.toMatch(/\p{Cc}/u);
  });

  test('wide letters take two columns, combining marks none', () => {
    expect(columnsOf('漢字')).toBe(4);
    expect(columnsOf('e\u0301')).toBe(1);
  });

  test('long lists are cut and the rest counted', () => {
    expect(listed([], 'or')).toBe('');
    expect(listed(['a'], 'or')).toBe('a');
    expect(listed(['a', 'b', 'c'], 'or')).toBe('a, b or c');
    expect(listed(['a', 'b', 'c', 'd'], 'and', 2)).toBe('a, b and 2 more');
  });
});
