import { expose } from 'comlink';
import { WorkApi } from './api.ts';

expose(new WorkApi());
