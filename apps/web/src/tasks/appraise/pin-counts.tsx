import { useLanguage } from '../../parts/language.tsx';
import { lengthText } from '../../parts/length-text.ts';
import type { PinPartProps } from './pin-fields.ts';

/** How many pins of which size are to be bought. */
export function PinCounts({ choice, unit }: PinPartProps) {
  const language = useLanguage();
  const { say } = language;
  const { counts } = choice;
  return (
    <section aria-labelledby="pin-counts">
      <h3 id="pin-counts">{say('Pins to buy, without spares')}</h3>
      {counts.pins === 0 ? (
        <p className="faint">{say('Pins can be counted once the stringing is described.')}</p>
      ) : (
        <>
          <ul>
            {counts.bySize.map(({ label, diameter, pins, byRemedy, assumed }) => (
              <li key={label ?? 'no size yet'}>
                <strong>
                  {pins} × {label ?? say('no size yet')}
                </strong>
                {diameter !== undefined && `, ${lengthText(diameter, unit, 'diameter', language)}`}{' '}
                <span className="faint">
                  {[
                    byRemedy > 0 ? say('{pins} by a choice of their own', { pins: byRemedy }) : undefined,
                    assumed > 0
                      ? say('{pins} assumed to be as the nearest measured pin', { pins: assumed })
                      : undefined,
                  ]
                    .filter((word) => word !== undefined)
                    .join('; ')}
                </span>
              </li>
            ))}
          </ul>
          {counts.bushings + counts.plugs > 0 && (
            <p>
              {say('{bushings} bushings, {plugs} plugs.', { bushings: counts.bushings, plugs: counts.plugs })}
            </p>
          )}
          <p className="faint">
            {say('{measured} of {pins} pins were measured.', {
              measured: counts.measured,
              pins: counts.pins,
            })}
          </p>
        </>
      )}
    </section>
  );
}
