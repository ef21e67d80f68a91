import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { defaultXmlLimits, xmlLimitSettings } from '#libs/jdf';
import { readCostOf } from './intake/read-cost.js';
import { readSettings } from './settings.js';

describe('settings from the environment', () => {
  it('has the defaults that are promised', () => {
    const { settings, errors, warnings } = readSettings({});
    expect([errors, warnings]).toEqual([[], []]);
    expect(settings).toMatchObject({
      PORT: 7420,
      HOST: '127.0.0.1',
      ROLE: 'all',
      DEVICE_ID: 'sidelay',
      DEMO: false,

      BODY_LIMIT_MB: 16,
      LOG_LEVEL: 'info',
    });
  });

  it('has a setting for every limit of a document, and passes it on', () => {
    expect(readCostOf(readSettings({}).settings!).limits).toEqual(defaultXmlLimits);
    const names = Object.entries(xmlLimitSettings);
    const env = Object.fromEntries(names.map(([, setting], i) => [setting, String(i + 1)]));
    const { settings, warnings } = readSettings(env);
    const given = Object.fromEntries(
      names.map(([name], i) => [name, name === 'bytes' ? (i + 1) * 1_048_576 : i + 1]),
    );
    expect([readCostOf(settings!).limits, warnings]).toEqual([given, []]);
  });

  it('refuses a depth of documents that no tree can have', () => {
    expect(readSettings({ SIDELAY_XML_DEPTH: '513' }).errors).toEqual([
      expect.stringMatching(/^SIDELAY_XML_DEPTH: .*1 to 512/),
    ]);
    expect(readSettings({ SIDELAY_XML_DEPTH: '512' }).errors).toEqual([]);
  });

  it('says one sentence for each wrong setting and never its value', () => {
    const { settings, errors } = readSettings({
      SIDELAY_PORT: 'seven',
      SIDELAY_ROLE: 'everything',
      SIDELAY_DATABASE_URL: 'mysql://secret-password@host/db',
    });
    expect(settings).toBeNull();
    expect(errors.map((text) => text.split(':')[0])).toEqual([
      'SIDELAY_PORT',
      'SIDELAY_DATABASE_URL',
      'SIDELAY_ROLE',
    ]);
    expect(errors.join()).not.toContain('secret-password');
  });

  it('warns of an unknown name and guesses what was meant', () => {
    expect(readSettings({ SIDELAY_DATABASEURL: 'x', SIDELAY_COLOUR: 'y' }).warnings).toEqual([
      'SIDELAY_DATABASEURL is no setting of Sidelay and was ignored; did you mean SIDELAY_DATABASE_URL?',
      'SIDELAY_COLOUR is no setting of Sidelay and was ignored',
    ]);
  });

  it('says of a setting for later versions that nothing comes of it yet', () => {
    expect(readSettings({ SIDELAY_MQTT_URL: 'mqtt://127.0.0.1' })).toMatchObject({
      errors: [],
      warnings: ['SIDELAY_MQTT_URL is known, but this version makes no use of it yet'],
    });
  });

  it('reads a secret from the file that NAME_FILE names', () => {
    const folder = mkdtempSync(join(tmpdir(), 'settings-'));
    try {
      writeFileSync(join(folder, 'url'), 'postgres://plant@db/sidelay\n');
      expect(readSettings({ SIDELAY_DATABASE_URL_FILE: join(folder, 'url') }).settings?.DATABASE_URL).toBe(
        'postgres://plant@db/sidelay',
      );
      expect(readSettings({ SIDELAY_DATABASE_URL_FILE: join(folder, 'none') }).errors).toEqual([
        "SIDELAY_DATABASE_URL_FILE: the file it names can't be read",
      ]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});
