import { scaleFindings } from '@becket/core';
import { useMemo } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { useFigures } from './use-analysed.ts';

/** When to leave a scale alone, said before anything is computed. */
export function LeaveItAlone() {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const found = useFigures(job, 'as found');
  const beyond = useMemo(
    () =>
      scaleFindings(found.analysis, undefined, language).filter(({ weight }) => weight === 'beyond a limit')
        .length,
    [found, language],
  );
  return (
    <div className="notice">
      <p>
        {beyond === 0
          ? say(
              'Nothing of the scale as found lies beyond the shop’s limits. Leaving it alone is the first answer: it keeps the instrument as it was made, and needs no proof.',
            )
          : say(
              '{beyond, plural, one {# finding lies} other {# findings lie}} beyond the shop’s limits. Whether new sizes help with that is seen below; some of it, such as short speaking lengths, no wire mends.',
              { beyond },
            )}
      </p>
      <p className="faint">
        {say(
          'Leave a scale alone on an instrument of historic worth, where the owner wants it as its maker made it, and where a load would rise on a plate, bridge or soundboard that is in doubt: there ask a specialist first.',
        )}
      </p>
    </div>
  );
}
