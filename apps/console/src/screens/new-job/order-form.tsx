import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import {
  bindingNames,
  emptyDraft,
  type FieldName,
  namedSizes,
  type OrderDraft,
  orderOf,
} from '../../order/order-draft.js';
import { ask } from '../../server/ask.js';
import type { Listing, StockItem } from '../../server/shapes.js';
import { words } from '../../words/index.js';
import { InkField, TextField } from './fields.js';
import { sendDocument, sending } from './sending.js';

const draft = signal<OrderDraft>(emptyDraft());
const papers = signal<readonly StockItem[]>([]);

/** The JSON order as a form. What may and may not be is the server's to say: it alone knows the plant. */
export function OrderForm() {
  const t = words.order;
  useEffect(() => {
    void ask<Listing<StockItem>>('/api/v1/stock').then((answer) => {
      if (answer.ok) papers.value = answer.value.items.filter((row) => row.unit === 'sheets');
    });
  }, []);
  const { text, ticked } = draft.value;
  const type = (name: FieldName) => (value: string) => {
    draft.value = { ...draft.value, text: { ...draft.value.text, [name]: value } };
  };
  const field = (name: FieldName, more: Partial<Parameters<typeof TextField>[0]> = {}) => (
    <TextField name={name} value={text[name]} onType={type(name)} {...more} />
  );
  const inks = (name: keyof OrderDraft['ticked']) => (
    <InkField
      name={name}
      ticked={ticked[name]}
      spot={text[name]}
      onType={type(name)}
      onTick={(chosen) => {
        draft.value = { ...draft.value, ticked: { ...draft.value.ticked, [name]: chosen } };
      }}
    />
  );
  const size = Object.entries(namedSizes).find(
    ([, [width, height]]) => text.trimWidthMm === String(width) && text.trimHeightMm === String(height),
  )?.[0];
  return (
    <form
      class="order"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void sendDocument({ json: orderOf(draft.value) });
      }}
    >
      <fieldset>
        <legend>{t.groups.job}</legend>
        {field('jobId')}
        {field('name', { wide: true })}
        {field('quantity', { numeric: true })}
      </fieldset>
      <fieldset>
        <legend>{t.groups.product}</legend>
        <div class="field">
          <label for="order-size">{t.size}</label>
          <select
            id="order-size"
            value={size ?? ''}
            onChange={(event) => {
              const chosen = namedSizes[event.currentTarget.value];
              if (chosen === undefined) return;
              const [trimWidthMm, trimHeightMm] = chosen.map(String) as [string, string];
              draft.value = { ...draft.value, text: { ...draft.value.text, trimWidthMm, trimHeightMm } };
            }}
          >
            <option value="">{t.sizeOwn}</option>
            {Object.keys(namedSizes).map((name) => (
              <option key={name} value={name}>
                {name}
              </option>
            ))}
          </select>
        </div>
        {field('trimWidthMm', { numeric: true })}
        {field('trimHeightMm', { numeric: true })}
        {field('pages', { numeric: true })}
        {field('binding', { options: bindingNames.map((name) => [name, t.bindings[name]!] as const) })}
      </fieldset>
      <fieldset>
        <legend>{t.groups.printing}</legend>
        {field('stock', { suggestions: papers.value, wide: true })}
        {field('bleedMm', { numeric: true })}
        {inks('inksFront')}
        {inks('inksBack')}
      </fieldset>
      <fieldset>
        <legend>{t.groups.extra}</legend>
        {field('due', { type: 'datetime-local' })}
        {field('priority', { numeric: true })}
        {field('customer', { wide: true })}
        {field('files', { lines: 2, wide: true })}
      </fieldset>
      <button type="submit" class="act act-first act-large" disabled={sending.value}>
        {sending.value ? t.sending : t.send}
      </button>
    </form>
  );
}
