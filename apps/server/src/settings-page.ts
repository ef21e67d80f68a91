import { greatestDepth } from '#libs/jdf';
import { settingTypes } from './settings.js';

type Name = keyof typeof settingTypes;

/** What each setting is for, for people. */
const words: Readonly<Record<Name, string>> = {
  PORT: 'Port that the server listens on',
  HOST: 'Address that it listens on; anything but this machine needs tokens',
  DATA_DIR: 'Folder for the embedded database, the inbox and what else is kept',
  DATABASE_URL: 'PostgreSQL server; left out, one is embedded in the data folder',
  QUEUE_URL: 'Redis or PostgreSQL for the queues; left out, the database',
  MQTT_URL: 'Broker of machines that speak MQTT; not used yet',
  PUBLIC_URL: 'Address at which devices call back, where that is another than host and port',
  ROLE: '`all`, `hub` (takes in and answers) or `worker` (delivers)',
  PLANT: "Plant definition; left out, the demo's",
  INBOX: 'Hot folder; left out, `inbox` in the data folder',
  FILE_ROOTS: 'Folders that addresses in tickets may read, with commas between',
  ALLOWED_HOSTS:
    'Hosts that addresses in tickets and of devices may reach beside registered devices, with commas between',
  DEVICE_ID: 'DeviceID and SenderID under which Sidelay itself speaks',
  DEMO: "1: with the simulated plant and the demo's orders",
  DEMO_SPEED: 'Plant seconds to a real second; 60 in the demo',
  BODY_LIMIT_MB: 'Largest document or package, in megabytes',
  XML_DEPTH: `Depth of elements in one document, at most ${greatestDepth}`,
  XML_ELEMENTS: 'Elements in one document',
  MESSAGE_ELEMENTS: 'Elements in one message (JMF, XJMF)',
  XML_NODES: 'Elements, texts and comments in one document',
  XML_ATTRIBUTES: 'Attributes of one element',
  XML_ATTRIBUTE_LENGTH: 'Characters in one attribute',
  XML_NAME_LENGTH: 'Characters in one name',
  XML_REFERENCES: 'Character and entity references in one document',
  XML_TEXT_LENGTH: 'Characters in one text',
  READ_SECONDS: 'Seconds that reading, checking and planning any document may take',
  READ_SECONDS_PER_MB: 'Seconds more for each megabyte of it',
  READ_MEMORY_MB: 'Memory of each thread that reads, in megabytes',
  TLS_CERT: 'Certificate chain (PEM file) for HTTPS',
  TLS_KEY: 'Its private key (PEM file)',
  CLIENT_CA: 'Authority (PEM file): everybody must show a client certificate of it',
  TRUSTED_PROXY: 'Address of the proxy in front whose forwarded headers count',
  OIDC_ISSUER: 'Sign-in service; not used yet',
  OIDC_CLIENT_ID: 'Name of this server there; not used yet',
  LOG_LEVEL: '`debug`, `info`, `warn` or `error`',
};

/** As it is written, where the value that is read from it is another. */
const asWritten: Partial<Record<Name, string>> = { DATA_DIR: './.sidelay' };

/** The page of all settings, made from the table that reads them. */
export function settingsPage(): string {
  const rows = (Object.keys(settingTypes) as Name[]).map(
    (name) => `| \`SIDELAY_${name}\` | ${usual(name)} | ${words[name]} |`,
  );
  return `# Settings

Made from \`apps/server/src/settings.ts\` by \`node scripts/settings.mjs\` after a build; change the tables, not this page.

All are environment variables, read once at start; each wrong one is named in a sentence of its own, an unknown \`SIDELAY_*\`
in a warning. \`NAME_FILE\` names a file that holds the value of \`NAME\`, for secrets. The command line reads \`SIDELAY_SERVER\`
and \`SIDELAY_TOKEN\` beside them, and the limits of documents.

| setting | when not given | what it is |
|---|---|---|
${rows.join('\n')}
`;
}

function usual(name: Name): string {
  const read = settingTypes[name].safeParse(undefined);
  const value = asWritten[name] ?? (read.success ? read.data : undefined);
  if (value === undefined || (Array.isArray(value) && value.length === 0)) return '–';
  if (typeof value === 'boolean') return value ? '1' : '0';
  return typeof value === 'number'
    ? value.toLocaleString('en-GB', { useGrouping: name !== 'PORT' })
    : `\`${value}\``;
}
