import { planParameters } from '../tables/parameters-plan.gen.ts';
import { provisionParameters } from '../tables/parameters-provision.gen.ts';
import { storesParameters } from '../tables/parameters-stores.gen.ts';
import { weighParameters } from '../tables/parameters-weigh.gen.ts';
import { winterParameters } from '../tables/parameters-winter.gen.ts';
import { PARTS } from '../tables/parts.gen.ts';

/** 64-bit FNV-1a as two halves; tells texts apart, protects nothing. Fowler, Noll & Vo (from memory). */
export function textDigest(text: string): string {
  let high = 0xcbf29ce4;
  let low = 0x84222325;
  for (let i = 0; i < text.length; i++) {
    low ^= text.charCodeAt(i);
    // times 0x100000001b3, in pieces that stay exact
    const carry = Math.floor(((low >>> 0) * 0x1b3) / 4294967296);
    high = (Math.imul(high, 0x1b3) + (low << 8) + carry) | 0;
    low = Math.imul(low, 0x1b3);
  }
  const hex = (word: number) => (word >>> 0).toString(16).padStart(8, '0');
  return hex(high) + hex(low);
}

/** Names the parameter tables a plan was made with. */
export function tablesDigest(): string {
  return textDigest(JSON.stringify([winterParameters, storesParameters, weighParameters, provisionParameters, planParameters, PARTS]));
}
