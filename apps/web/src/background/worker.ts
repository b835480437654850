import { expose } from 'comlink';
import { WorkApi } from './api.ts';

const api = new WorkApi();
expose(api);
// The page names the worker after its database: reading begins while the page is still drawing its frame.
api.begin(self.name);
