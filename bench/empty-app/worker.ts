import { expose } from 'comlink';
import { read } from './database.ts';

expose({ read });
