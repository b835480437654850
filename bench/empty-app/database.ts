import Dexie from 'dexie';

/** Opens the one database and counts what is in it. */
export async function read(): Promise<number> {
  const database = new Dexie('empty-app');
  database.version(1).stores({ facts: 'key' });
  return (await database.table('facts').toArray()).length;
}
