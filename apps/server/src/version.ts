import about from '../package.json' with { type: 'json' };

export const programVersion: string = about.version;
