/** Documents made to cost much, each of about the given megabytes. Made up here; no list of attacks has them by size. */
const JDF_NAMESPACE = 'http://www.CIP4.org/JDFSchema_1_1';

const filled = (bytes: number, piece: (at: number) => string): string => {
  const pieces: string[] = [];
  for (let length = 0, at = 0; length < bytes; at++) {
    const next = piece(at);
    pieces.push(next);
    length += next.length;
  }
  return pieces.join('');
};

const ticket = (content: string, attributes = ''): string =>
  `<JDF xmlns="${JDF_NAMESPACE}" ID="n" JobPartID="p" JobID="hostile" Type="Product" Status="Waiting" Version="1.7" ${attributes}>${content}</JDF>`;

/** By what they have too much of. */
export function hostileDocuments(megabytes: number): Readonly<Record<string, string>> {
  const bytes = megabytes * 1024 * 1024 - 1024;
  const few = Math.min(bytes, 10 * 1024 * 1024);
  return {
    siblings: ticket(filled(bytes, () => '<Comment/>')),
    // As many as are allowed, and none of them is any good: what is looked at most.
    'dangling links': ticket(
      `<ResourceLinkPool>${filled(bytes, (at) => `<ComponentLink rRef="r${at}" Usage="Input"${' '.repeat(40)}/>`)}</ResourceLinkPool>`,
    ),
    attributes: ticket(
      '',
      Array.from({ length: 50_000 }, (_, at) => `a${at}="${'x'.repeat(200)}"`).join(' '),
    ),
    depth: `${ticket('').replace('</JDF>', '')}${filled(bytes, () => '<JDF>')}`,
    'one attribute': ticket('', `DescriptiveName="${'x'.repeat(few)}"`),
    'one text': ticket(`<Comment>${'x'.repeat(few)}</Comment>`),
    references: ticket(`<Comment>${'&#65;'.repeat(Math.floor(few / 5))}</Comment>`),
    comments: ticket(filled(bytes, () => '<!---->')),
  };
}

/** Messages that are as large as a body may be. */
export function hostileMessages(megabytes: number): Readonly<Record<string, string>> {
  const bytes = megabytes * 1024 * 1024 - 1024;
  const jmf = (content: string): string =>
    `<JMF xmlns="${JDF_NAMESPACE}" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance" SenderID="hostile" TimeStamp="2026-01-05T08:00:00Z" Version="1.7">${content}</JMF>`;
  return {
    'many messages': jmf(
      filled(bytes, (at) => `<Query ID="q${at}" Type="KnownDevices" xsi:type="QueryKnownDevices"/>`),
    ),
    'one message': jmf(
      `<Response ID="r" refID="q" Type="QueueStatus" xsi:type="ResponseQueueStatus"><Queue DeviceID="d" Status="Waiting">${filled(bytes, (at) => `<QueueEntry QueueEntryID="q${at}" Status="Waiting" JobID="j"/>`)}</Queue></Response>`,
    ),
  };
}
