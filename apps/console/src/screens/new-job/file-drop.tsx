import { useRef, useState } from 'preact/hooks';
import { mediaTypeOf, packageType } from '../../order/order-draft.js';
import { words } from '../../words/index.js';
import { sendDocument, sending } from './sending.js';

const FIRST_BYTES = 2000;

async function sendFile(file: File): Promise<void> {
  const start = await file.slice(0, FIRST_BYTES).text();
  await sendDocument({ body: file, mediaType: packageType(start) ?? mediaTypeOf(file.name) });
}

/** A ticket as a file: dropped here or chosen. */
export function FileDrop() {
  const t = words.order;
  const chooser = useRef<HTMLInputElement>(null);
  const [over, setOver] = useState(false);
  const [name, setName] = useState('');
  const take = (file: File | null | undefined): void => {
    if (file == null) return;
    setName(file.name);
    void sendFile(file).then(() => setName(''));
  };
  return (
    <section aria-labelledby="file-title">
      <h2 id="file-title">{t.byFile}</h2>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is an extra way, the button does the same by keyboard */}
      <div
        class="drop"
        data-over={over}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={(event) => {
          event.preventDefault();
          setOver(false);
          take(event.dataTransfer?.files[0]);
        }}
      >
        <p>{name === '' ? t.dropHere : t.chosen(name)}</p>
        <input
          ref={chooser}
          id="file"
          class="unseen"
          type="file"
          tabIndex={-1}
          aria-label={t.choose}
          accept=".jdf,.xml,.json,.zip,.mjm,.mjd"
          onChange={(event) => {
            take(event.currentTarget.files?.[0]);
            event.currentTarget.value = '';
          }}
        />
        <button type="button" class="act" disabled={sending.value} onClick={() => chooser.current?.click()}>
          {t.choose}
        </button>
      </div>
    </section>
  );
}
