import { inches, inchPounds, inInches, inInchPounds, metres, newtonMetres } from '@becket/core';
import { type PinChoice, setPinPolicy } from '@becket/tasks';
import { useState } from 'react';
import { runHere } from '../../desk/run-here.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { SmallForm } from '../../parts/small-form.tsx';
import { torqueText } from './torque-state.ts';

/** The shop's rule for going up in size: shown as it stands, and open to change. */
export function PinRule({ choice }: { choice: PinChoice }) {
  const { desk } = useDesk();
  const { policy, isOwnPolicy } = choice;
  const [isOpen, setOpen] = useState(false);
  const inPounds = (torque: number) => String(Math.round(inInchPounds(newtonMetres(torque))));
  return (
    <section aria-labelledby="pin-rule">
      <h3 id="pin-rule">The rule</h3>
      <p>
        All readings at {torqueText(policy.firmTorque_n_m)} or more: {policy.sizesUpWhenFirm}{' '}
        {policy.sizesUpWhenFirm === 1 ? 'size' : 'sizes'} up. Below: {policy.sizesUpWhenLoose}. Any below{' '}
        {torqueText(policy.veryLooseTorque_n_m)}: the block itself is in question.{' '}
        <span className="faint">
          {isOwnPolicy ? `This job’s own rule: ${policy.source}.` : `From ${policy.source}.`}
        </span>
      </p>
      {!isOpen ? (
        <button type="button" className="button" onClick={() => setOpen(true)}>
          Change the rule
        </button>
      ) : (
        <SmallForm
          label="The rule for pin sizes"
          fields={[
            { name: 'firm', label: 'Firm from (in·lbf)', keys: 'decimal' },
            { name: 'loose', label: 'Very loose below (in·lbf)', keys: 'decimal' },
            { name: 'up', label: 'Sizes up when firm', keys: 'decimal' },
            { name: 'upLoose', label: 'Sizes up when not', keys: 'decimal' },
            {
              name: 'sizes',
              label: 'Sizes, small to large',
              hint: 'name and inches, a comma between: 2/0 0.282, 3/0 0.286',
            },
            { name: 'source', label: 'Whose rule it is' },
          ]}
          start={{
            firm: inPounds(policy.firmTorque_n_m),
            loose: inPounds(policy.veryLooseTorque_n_m),
            up: String(policy.sizesUpWhenFirm),
            upLoose: String(policy.sizesUpWhenLoose),
            sizes: policy.sizes
              .map(({ label, diameter_m }) => `${label} ${inInches(metres(diameter_m)).toFixed(3)}`)
              .join(', '),
            source: isOwnPolicy ? policy.source : '',
          }}
          submit="Keep the rule for this job"
          onKeep={async (values) => {
            const number = (text: string, what: string): number => {
              const value = Number(text.trim().replace(',', '.'));
              if (text.trim() === '' || !Number.isFinite(value))
                throw new RangeError(
                  `Cannot keep this rule: ${what} is needed as a number, '${text.trim()}' was found. Type it again.`,
                );
              return value;
            };
            const source = values.source.trim();
            if (source === '')
              throw new RangeError(
                'Cannot keep this rule: whose rule it is is needed, nothing was found. A name or “our shop” will do.',
              );
            const sizes = values.sizes
              .split(',')
              .map((one) => one.trim())
              .filter((one) => one !== '')
              .map((one) => {
                const [label, size, ...rest] = one.split(/\s+/);
                const value = Number(size);
                if (label === undefined || rest.length > 0 || !(value > 0))
                  throw new RangeError(
                    `Cannot keep this rule: each size needs its name and its inches, such as 2/0 0.282; '${one}' was found. Correct it.`,
                  );
                return { label, diameter_m: inches(value), source };
              });
            await runHere(desk, (context, id) =>
              setPinPolicy(context, id, {
                source,
                sizes,
                firmTorque_n_m: inchPounds(number(values.firm, 'the firm torque')),
                veryLooseTorque_n_m: inchPounds(number(values.loose, 'the very loose torque')),
                sizesUpWhenFirm: number(values.up, 'the sizes up'),
                sizesUpWhenLoose: number(values.upLoose, 'the sizes up when not firm'),
              }),
            );
            setOpen(false);
            return values;
          }}
        >
          <button type="button" className="button quiet" onClick={() => setOpen(false)}>
            Leave it
          </button>
        </SmallForm>
      )}
    </section>
  );
}
