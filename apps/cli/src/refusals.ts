import { english, type Language } from '@becket/core';

/** The command line was understood word by word, and cannot be meant so. */
export class WrongUse extends Error {
  override readonly name = 'WrongUse';
}

/** There is no store in that folder, and the command does not begin one. */
export class NoStore extends Error {
  override readonly name = 'NoStore';
  constructor(folder: string, { say }: Language = english) {
    super(
      say(
        'Cannot find any job in {folder}: there is no store in that folder. Name another with --data, or open a job with becket new.',
        { folder },
      ),
    );
  }
}
