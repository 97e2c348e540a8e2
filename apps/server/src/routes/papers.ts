import { paperRoute } from '@becket/contract/routes';
import { languageFor, makePaper, type PaperName, paperNames } from '@becket/tasks';
import { Refused } from '../answer-error.ts';
import { type RouteParts, taskContext } from '../server-parts.ts';

export function paperRoutes(parts: RouteParts): void {
  parts.app.openapi(paperRoute, async (c) => {
    const { job, paper } = c.req.valid('param');
    if (!isPaperName(paper)) {
      throw new Refused(
        'paper-not-found',
        `There is no paper '${paper}': one of ${paperNames.join(', ')} is needed. Take a name from there.`,
      );
    }
    const { language, ...options } = c.req.valid('query');
    const context = { ...taskContext(parts), language: await languageFor(language) };
    const made = await makePaper(context, job, { paper, ...options });
    return c.body(made.bytes as Uint8Array<ArrayBuffer>, 200, {
      'Content-Type': made.mediaType,
      'Content-Disposition': `attachment; filename="${made.fileName}"`,
    });
  });
}

const isPaperName = (name: string): name is PaperName => (paperNames as readonly string[]).includes(name);
