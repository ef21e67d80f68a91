import { type FieldName, fieldOf, needed, processInks } from '../../order/order-draft.js';
import type { StockItem } from '../../server/shapes.js';
import { words } from '../../words/index.js';
import { fieldId } from './outcome.js';
import { outcome } from './sending.js';

const hintOf = (name: FieldName): string | undefined =>
  (words.order.hints as Readonly<Record<string, string>>)[name];

/** The findings that mean this field, in words. */
function faultsOf(name: FieldName): readonly string[] {
  return (outcome.value?.problems ?? [])
    .filter((problem) => problem.severity === 'error' && fieldOf(problem) === name)
    .map((problem) => problem.message);
}

export interface TextFieldProps {
  name: FieldName;
  value: string;
  onType: (value: string) => void;
  type?: 'text' | 'datetime-local';
  numeric?: boolean;
  lines?: number;
  wide?: boolean;
  options?: readonly (readonly [value: string, word: string])[];
  suggestions?: readonly StockItem[];
}

/** One field with its label, its hint and what the server found wrong with it. */
export function TextField({
  name,
  value,
  onType,
  type = 'text',
  numeric,
  lines,
  wide,
  options,
  suggestions,
}: TextFieldProps) {
  const id = fieldId(name);
  const faults = faultsOf(name);
  const hint = hintOf(name);
  const shared = {
    id,
    value,
    'aria-invalid': faults.length > 0,
    'aria-required': needed.has(name),
    'aria-describedby': `${id}-told`,
    onInput: (event: { currentTarget: { value: string } }) => onType(event.currentTarget.value),
  } as const;
  return (
    <div class={wide ? 'field field-wide' : 'field'}>
      <label for={id}>
        {words.order.fields[name]}
        {needed.has(name) && <span class="quiet"> {words.order.must}</span>}
      </label>
      {options !== undefined ? (
        <select {...shared}>
          {options.map(([option, word]) => (
            <option key={option} value={option}>
              {word}
            </option>
          ))}
        </select>
      ) : lines !== undefined ? (
        <textarea {...shared} rows={lines} />
      ) : (
        <input
          {...shared}
          type={type}
          inputMode={numeric ? 'decimal' : undefined}
          list={suggestions && suggestions.length > 0 ? `${id}-list` : undefined}
        />
      )}
      {suggestions !== undefined && suggestions.length > 0 && (
        <datalist id={`${id}-list`}>
          {suggestions.map((row) => (
            <option key={row.item} value={row.item}>
              {row.name}
            </option>
          ))}
        </datalist>
      )}
      <FieldNotes id={`${id}-told`} hint={hint} faults={faults} />
    </div>
  );
}

function FieldNotes({
  id,
  hint,
  faults,
}: {
  id: string;
  hint: string | undefined;
  faults: readonly string[];
}) {
  return (
    <div id={id}>
      {hint !== undefined && <p class="hint">{hint}</p>}
      {faults.map((fault) => (
        <p key={fault} class="fault">
          {fault}
        </p>
      ))}
    </div>
  );
}

/** Process inks to tick, other inks by name. */
export function InkField({
  name,
  ticked,
  spot,
  onTick,
  onType,
}: {
  name: FieldName;
  ticked: readonly string[];
  spot: string;
  onTick: (ticked: readonly string[]) => void;
  onType: (value: string) => void;
}) {
  const id = fieldId(name);
  return (
    <fieldset class="inks">
      <legend>{words.order.fields[name]}</legend>
      {processInks.map((ink) => (
        <label key={ink} class="tick">
          <input
            type="checkbox"
            checked={ticked.includes(ink)}
            onChange={(event) => {
              const on = event.currentTarget.checked;
              onTick(processInks.filter((one) => (one === ink ? on : ticked.includes(one))));
            }}
          />
          {ink}
        </label>
      ))}
      <div class="field">
        <label for={id}>{words.order.hints.spot}</label>
        <input
          id={id}
          value={spot}
          aria-invalid={faultsOf(name).length > 0}
          aria-describedby={`${id}-told`}
          onInput={(event) => onType(event.currentTarget.value)}
        />
        <FieldNotes id={`${id}-told`} hint={undefined} faults={faultsOf(name)} />
      </div>
    </fieldset>
  );
}
