import { useEffect, useRef, useState } from 'react';
import { type Felt, feel, say } from '../modes/tell.ts';

/** A pause in typing after which an answer is told; before it the next digit may come [ms]. */
const PAUSE_MS = 600;

/**
 * Tells a sentence once it has stood for a moment: spoken and felt where that is switched on, and given back for screen readers.
 *
 * sentence   null: nothing to tell, and the next one is told even if it is the same
 */
export function useTelling(sentence: string | null, felt: Felt, atOnce: boolean): string {
  const [told, setTold] = useState('');
  const last = useRef<string | null>(null);
  useEffect(() => {
    if (sentence === null || sentence === last.current) {
      last.current = sentence;
      return;
    }
    const tell = () => {
      last.current = sentence;
      setTold(sentence);
      feel(felt);
      say(sentence);
    };
    const timer = setTimeout(tell, atOnce ? 0 : PAUSE_MS);
    return () => clearTimeout(timer);
  }, [sentence, felt, atOnce]);
  return told;
}
