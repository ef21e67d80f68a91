import { plantNow } from '../../live/index.js';
import { StateMark } from '../../parts/state-mark.js';
import { jobAddress } from '../../route.js';
import type { Device, Ticket } from '../../server/shapes.js';
import { agoWords, instantOf, spanWords, timeWords } from '../../time/phrases.js';
import { words } from '../../words/index.js';
import { detailWords, stepWord } from '../../words/steps.js';

/** Each device: what it does, for which job, how fast, since when, who said so, and how old that word is. */
export function Hall({
  devices,
  tickets,
  loaded,
}: {
  devices: readonly Device[];
  tickets: ReadonlyMap<string, Ticket>;
  loaded: boolean;
}) {
  const t = words.board;
  return (
    <section class="hall" aria-labelledby="hall-title">
      <h2 id="hall-title">{t.hall}</h2>
      {devices.length === 0 && <p class="quiet">{loaded ? t.noDevices : t.loading}</p>}
      <ul class="stations">
        {[...devices].sort(byWay).map((device) => (
          <Station key={device.id} device={device} ticket={tickets.get(device.ticket ?? '')} />
        ))}
      </ul>
    </section>
  );
}

/** As a job goes through the hall (common practice, no source): places stay, whatever the devices do. */
const WAY = ['prepress', 'platesetter', 'press', 'guillotine', 'folder', 'stitcher', 'binder', 'bench'];
const byWay = (a: Device, b: Device): number =>
  WAY.indexOf(a.kind) - WAY.indexOf(b.kind) || (a.id < b.id ? -1 : 1);

function Station({ device, ticket }: { device: Device; ticket: Ticket | undefined }) {
  const t = words.board;
  const now = plantNow.value ?? instantOf(device.lastSeen ?? device.since);
  const since = instantOf(device.since);
  const silent = device.silent !== null;
  const step = ticket?.steps.find((row) => row.id === device.step);
  const work = step === undefined ? (device.job ?? '') : `${stepWord(step)}: ${ticket!.name}`;
  return (
    <li class="station" data-device={device.id} data-silent={silent}>
      <p class="station-name">{device.name}</p>
      <p class="station-state">
        <StateMark status={silent ? 'Silent' : device.status} of="device" />
        {device.speed !== null && device.speed > 0 && !silent && (
          <span class="station-speed">{t.speed(Math.round(device.speed))}</span>
        )}
      </p>
      {silent && <p class="station-silence">{t.silence(device.silent)}</p>}
      {(work !== '' || !silent) && (
        <p class="station-work" data-free={work === ''}>
          {device.ticket !== null && work !== '' ? (
            <a href={jobAddress(device.ticket)}>{work}</a>
          ) : (
            work || t.noWork
          )}
        </p>
      )}
      <p class="station-told quiet">
        {silent && <span>{t.before(words.device[device.status] ?? device.status)} </span>}
        {device.statusDetails !== null && <span>{detailWords(device.statusDetails)}; </span>}
        <span>{t.since(timeWords(since, now), spanWords((now - since) / 1000))}; </span>
        <span>{words.source[device.source] ?? device.source}, </span>
        <span>
          {device.lastSeen === null ? t.neverHeard : t.heard(agoWords(instantOf(device.lastSeen), now))}
        </span>
      </p>
    </li>
  );
}
