import { expose } from 'comlink';
import { Planner } from './planner.ts';

expose(new Planner());
