import { inches, inchPounds, inInches, inInchPounds, metres, newtonMetres, sayKnown } from '@becket/core';
import { type PinChoice, setPinPolicy } from '@becket/tasks';
import { useState } from 'react';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';
import { SmallForm } from '../../parts/small-form.tsx';
import { typedSizes } from './pins-state.ts';
import { torqueText } from './torque-state.ts';

/** The shop's rule for going up in size: shown as it stands, and open to change. */
export function PinRule({ choice }: { choice: PinChoice }) {
  const language = useLanguage();
  const { fixed, say, sayNodes } = language;
  const { desk } = useDesk();
  const { policy, isOwnPolicy } = choice;
  const [isOpen, setOpen] = useState(false);
  const inPounds = (torque: number) => String(Math.round(inInchPounds(newtonMetres(torque))));
  return (
    <section aria-labelledby="pin-rule">
      <h3 id="pin-rule">{say('The rule')}</h3>
      <p>
        {sayNodes(
          'All readings at {firm} or more: {up, plural, one {# size} other {# sizes}} up. Below: {upWhenLoose}. Any below {veryLoose}: the block itself is in question. {source}',
          {
            firm: torqueText(policy.firmTorque_n_m, language),
            up: policy.sizesUpWhenFirm,
            upWhenLoose: policy.sizesUpWhenLoose,
            veryLoose: torqueText(policy.veryLooseTorque_n_m, language),
            source: (
              <span className="faint">
                {isOwnPolicy
                  ? say('This job’s own rule: {source}.', { source: policy.source })
                  : say('From {source}.', { source: sayKnown(policy.source, language) })}
              </span>
            ),
          },
        )}
      </p>
      {!isOpen ? (
        <button type="button" className="button" onClick={() => setOpen(true)}>
          {say('Change the rule')}
        </button>
      ) : (
        <SmallForm
          label={say('The rule for pin sizes')}
          fields={[
            { name: 'firm', label: say('Firm from (in·lbf)'), keys: 'decimal' },
            { name: 'loose', label: say('Very loose below (in·lbf)'), keys: 'decimal' },
            { name: 'up', label: say('Sizes up when firm'), keys: 'decimal' },
            { name: 'upLoose', label: say('Sizes up when not'), keys: 'decimal' },
            {
              name: 'sizes',
              label: say('Sizes, small to large'),
              hint: say('name and inches, a comma between: 2/0 0.282, 3/0 0.286'),
            },
            { name: 'source', label: say('Whose rule it is') },
          ]}
          start={{
            firm: inPounds(policy.firmTorque_n_m),
            loose: inPounds(policy.veryLooseTorque_n_m),
            up: String(policy.sizesUpWhenFirm),
            upLoose: String(policy.sizesUpWhenLoose),
            sizes: policy.sizes
              .map(({ label, diameter_m }) => `${label} ${fixed(inInches(metres(diameter_m)), 3)}`)
              // Where a comma stands inside a number it cannot stand between two.
              .join(fixed(0.5, 1).includes(',') ? '; ' : ', '),
            source: isOwnPolicy ? policy.source : '',
          }}
          submit={say('Keep the rule for this job')}
          onKeep={(values) => {
            const number = (text: string, what: string): number => {
              const value = Number(text.trim().replace(',', '.'));
              if (text.trim() === '' || !Number.isFinite(value))
                throw new RangeError(
                  say(
                    "Cannot keep this rule: {what} is needed as a number, '{found}' was found. Type it again.",
                    { what, found: text.trim() },
                  ),
                );
              return value;
            };
            const source = values.source.trim();
            if (source === '')
              throw new RangeError(
                say(
                  'Cannot keep this rule: whose rule it is is needed, nothing was found. A name or “our shop” will do.',
                ),
              );
            const sizes = typedSizes(values.sizes).map((one) => {
              const [label, size, ...rest] = one.split(/\s+/);
              const value = Number(size?.replace(',', '.'));
              if (label === undefined || rest.length > 0 || !(value > 0))
                throw new RangeError(
                  say(
                    "Cannot keep this rule: each size needs its name and its inches, such as 2/0 0.282; '{one}' was found. Correct it.",
                    { one },
                  ),
                );
              return { label, diameter_m: inches(value), source };
            });
            const kept = desk
              .runHere((context, id) =>
                setPinPolicy(context, id, {
                  source,
                  sizes,
                  firmTorque_n_m: inchPounds(number(values.firm, say('the firm torque'))),
                  veryLooseTorque_n_m: inchPounds(number(values.loose, say('the very loose torque'))),
                  sizesUpWhenFirm: number(values.up, say('the sizes up')),
                  sizesUpWhenLoose: number(values.upLoose, say('the sizes up when not firm')),
                }),
              )
              .then(() => setOpen(false));

            return { next: values, kept };
          }}
        >
          <button type="button" className="button quiet" onClick={() => setOpen(false)}>
            {say('Leave it')}
          </button>
        </SmallForm>
      )}
    </section>
  );
}
