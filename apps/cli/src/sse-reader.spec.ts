import { SseReader } from './sse-reader.js';

// Rules: WHATWG HTML, section "Server-sent events", 9.2.5 (parsing) and 9.2.6 (interpreting).
describe('a reader of server-sent events', () => {
  it('gives an event when its empty line has come, however the stream is cut into pieces', () => {
    const text = 'id: 7\nevent: step.counted\ndata: {"good":1}\n\nid: 8\ndata: x\n\n';
    for (let size = 1; size <= text.length; size++) {
      const reader = new SseReader();
      const events = [];
      for (let at = 0; at < text.length; at += size) events.push(...reader.push(text.slice(at, at + size)));
      expect(events).toEqual([
        { id: '7', data: '{"good":1}' },
        { id: '8', data: 'x' },
      ]);
    }
  });

  it.each([
    ['line feed', '\n'],
    ['carriage return and line feed', '\r\n'],
  ])('takes %s as the end of a line', (_name, end) => {
    const reader = new SseReader();
    expect(reader.push(['id:1', 'data:a', '', ''].join(end))).toEqual([{ id: '1', data: 'a' }]);
  });

  it('takes a lone carriage return as the end of a line once the next character is there', () => {
    const reader = new SseReader();
    expect(reader.push('data: a\r')).toEqual([]);
    expect(reader.push('\rdata: b\r')).toEqual([{ id: '', data: 'a' }]);
  });

  it('joins several lines of data by line feeds', () => {
    expect(new SseReader().push('data: one\ndata\ndata:  two\n\n')).toEqual([
      { id: '', data: 'one\n\n two' },
    ]);
  });

  it('passes over comments, unknown fields and blocks without data', () => {
    const reader = new SseReader();
    expect(reader.push(': still here\n\nshelf: 3\n\nid: 4\n\ndata: x\n\n')).toEqual([{ id: '4', data: 'x' }]);
  });

  it('keeps the latest id, and takes none that holds a NUL', () => {
    const reader = new SseReader();
    expect(reader.push('id: 5\ndata: a\n\nid: 6\0\ndata: b\n\n')).toEqual([
      { id: '5', data: 'a' },
      { id: '5', data: 'b' },
    ]);
  });

  it('hears how long the server asks to wait, in digits only', () => {
    const reader = new SseReader();
    expect(reader.retryMs).toBeNull();
    reader.push('retry: 2000\nretry: soon\n');
    expect(reader.retryMs).toBe(2000);
  });
});
