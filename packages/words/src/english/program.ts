/** What the command line says about itself. */
export const program = {
  description: 'What every honey bee colony holds before the winter, whether that lasts, and who gives what to whom.',
  after:
    'Input is one JSON object from FILE or standard input (plan and mites: a journal, one record a line). winterheft COMMAND --help shows an example.',
  help: 'show this help',
  file: 'a file with the input, or - for standard input (also when left out)',
  json: 'print one JSON object, always in SI units',
  units: 'units of the table: metric, us, or ca (pounds and degrees Celsius)',
  example: 'Example:',
  schema: 'print the JSON Schema of what a command reads and prints, defaults included',
  schemaCommand: 'the command whose schema is wanted',
  seeHelp: 'allowed: what winterheft COMMAND --help lists',
  ownMistake: 'this is a mistake of the program, not of your input; please report it with the lines below',
} as const;
