// Opens a description in a YAML language server, as an editor does, and prints as JSON what it diagnoses and completes.
// Usage: node editor.js SCHEMA FILE LINE COLUMN (from 0, where completion is asked for)
const fs = require('fs');
const path = require('path');
const { spawn } = require('child_process');
const rpc = require('vscode-jsonrpc/node');

const [schema, file, line, column] = process.argv.slice(2);
const uri = 'file://' + path.resolve(file);
const text = fs.readFileSync(file, 'utf8');
const server = spawn(process.execPath, [path.join(path.dirname(require.resolve('yaml-language-server/package.json')), 'bin/yaml-language-server'), '--stdio']);
const connection = rpc.createMessageConnection(new rpc.StreamMessageReader(server.stdout), new rpc.StreamMessageWriter(server.stdin));
const settings = { validate: true, completion: true, hover: true, schemaStore: { enable: false }, schemas: { ['file://' + path.resolve(schema)]: '*.yaml' } };

const diagnosed = new Promise(resolve => connection.onNotification('textDocument/publishDiagnostics', resolve));
connection.onRequest('workspace/configuration', asked => asked.items.map(item => (item.section === 'yaml' ? settings : {})));
connection.onRequest('client/registerCapability', () => null);
connection.listen();

(async () => {
  await connection.sendRequest('initialize', {
    processId: process.pid, rootUri: null,
    capabilities: { workspace: { configuration: true }, textDocument: { completion: { completionItem: { snippetSupport: true } } } },
  });
  await connection.sendNotification('initialized', {});
  await connection.sendNotification('workspace/didChangeConfiguration', { settings: { yaml: settings } });
  await connection.sendNotification('textDocument/didOpen', { textDocument: { uri, languageId: 'yaml', version: 1, text } });
  const problems = (await diagnosed).diagnostics.map(d => `${d.range.start.line + 1}: ${d.message}`);
  const position = { line: Number(line), character: Number(column) };
  const offered = await connection.sendRequest('textDocument/completion', { textDocument: { uri }, position });
  const hover = await connection.sendRequest('textDocument/hover', { textDocument: { uri }, position });
  process.stdout.write(JSON.stringify({
    problems,
    completions: (Array.isArray(offered) ? offered : offered.items).map(i => i.label),
    hover: hover ? JSON.stringify(hover.contents) : '',
  }));
  server.kill();
  process.exit(0);
})().catch(error => { console.error(String(error)); server.kill(); process.exit(1); });
