// The peer of the signals bench: a bare HTTP server that parses each body and says nothing.
import { createServer } from 'node:http';
import { XMLParser } from 'fast-xml-parser';

const parser = new XMLParser({ ignoreAttributes: false });
const server = createServer((request, response) => {
  const chunks = [];
  request.on('data', (chunk) => chunks.push(chunk));
  request.on('end', () => {
    parser.parse(Buffer.concat(chunks).toString('utf8'));
    response.writeHead(200, { 'content-length': '0' }).end();
  });
});
server.listen(0, '127.0.0.1', () => process.send({ port: server.address().port }));
process.on('disconnect', () => process.exit());
