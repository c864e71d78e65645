// By https in a club's own network: the authority is trusted as a phone does it, and
// the page for the green then opens without a network. And behind a proxy.
import assert from "node:assert/strict";
import { execFile, spawn } from "node:child_process";
import { createHash, X509Certificate } from "node:crypto";
import { existsSync } from "node:fs";
import { copyFile, mkdir, mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { promisify } from "node:util";
import { firstTime, phoneIn } from "./field.mjs";

const run = promisify(execFile);
const program = process.env.BAIZE_PROGRAM;
const larch = new URL("../clubs/larch_hollow", import.meta.url).pathname;
const name = "greens.local";
const here = (path) => existsSync(path);
const certutil = here("/usr/bin/certutil");
const nginx = here("/usr/sbin/nginx");

let folder, database, phone;
const running = [];
before(async () => {
  folder = await mkdtemp(join(tmpdir(), "baize-https-"));
  database = join(folder, "club.sqlite3");
  await run(program, ["import", larch, "--db", database]);
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  for (const child of running) child.kill("SIGTERM"); // a proxy takes its workers with it
  await rm(folder, { recursive: true, force: true, maxRetries: 20 });
});

/** The program, and what it says when it stands. */
async function serve(...words) {
  const child = spawn(program, ["serve", "--db", database, "--port", "0", ...words], { stdio: ["ignore", "pipe", "pipe"] });
  running.push(child);
  const server = { child, said: "", log: "" };
  child.stderr.on("data", (text) => (server.log += text));
  await new Promise((resolve, reject) => {
    child.stdout.on("data", (text) => {
      server.said += text;
      if (/Ctrl\+C ends it/.test(server.said)) setTimeout(resolve, 100);
    });
    child.once("exit", (code) => reject(new Error(`The server ended with ${code}: ${server.said}${server.log}`)));
  });
  server.port = /:(\d+)\/ \(/.exec(server.said)[1];
  server.end = () => new Promise((resolve) => (child.once("exit", resolve), child.kill("SIGTERM")));
  return server;
}

/** A phone that trusts these authorities, in a home of its own. */
async function trusting(label, file) {
  const home = join(folder, label);
  const store = join(home, ".pki/nssdb");
  await mkdir(store, { recursive: true });
  await run("certutil", ["-N", "-d", `sql:${store}`, "--empty-password"]);
  if (file) await run("certutil", ["-A", "-d", `sql:${store}`, "-t", "C,,", "-n", "authority", "-i", file]);
  return phoneIn(folder, {
    name: `${label}-phone`,
    args: [`--host-resolver-rules=MAP ${name} 127.0.0.1,MAP bank.example 127.0.0.1`],
    env: { HOME: home },
  });
}

test("a phone takes the authority, compares it, trusts it, and works without a network", { skip: !certutil && "certutil (libnss3-tools) is missing" }, async () => {
  const server = await serve("--tls", "--address", "127.0.0.1", "--name", name);
  assert.match(server.said, new RegExp(`https://${name}:${server.port}/`));
  const plain = `http://127.0.0.1:${server.port}`;
  const page = await (await fetch(`${plain}/phone`)).text();
  const told = /([0-9A-F]{2}:){31}[0-9A-F]{2}/.exec(server.said)[0];
  assert.ok(page.includes(told), "page and terminal show the same fingerprint");
  const authority = Buffer.from(await (await fetch(`${plain}/phone/authority.crt`)).arrayBuffer());
  assert.equal(new X509Certificate(authority).fingerprint256, told);
  assert.equal(createHash("sha256").update(authority).digest("hex").toUpperCase(), told.replaceAll(":", ""));
  const way = await fetch(`${plain}/field/?x=1`, { redirect: "manual" });
  assert.equal(way.status, 307);
  assert.equal(way.headers.get("location"), `https://127.0.0.1:${server.port}/field/?x=1`);

  const url = `https://${name}:${server.port}`;
  phone = await trusting("stranger");
  await assert.rejects(phone.page.goto(`${url}/field/`), /ERR_CERT_AUTHORITY_INVALID/, "not trusted yet");
  await phone.context.close();

  const file = join(folder, "authority.crt");
  await writeFile(file, authority);
  phone = await trusting("trusting", file);
  const elsewhere = await phone.context.newPage();
  await assert.rejects(elsewhere.goto(`https://bank.example:${server.port}/`), /ERR_CERT/, "for no other name");
  await elsewhere.close();
  const shown = await phone.page.goto(`${url}/phone`);
  assert.equal(shown.status(), 200);
  assert.equal(shown.headers()["strict-transport-security"], undefined);
  assert.equal(await phone.page.locator(".code svg").count(), 2);
  await firstTime(phone, { url });
  assert.equal(await phone.page.evaluate(() => isSecureContext), true);
  assert.equal(await server.end(), 0);
  await phone.page.goto(`${url}/field/`);
  await phone.page.locator(".next-green").waitFor();
  assert.deepEqual(phone.wrong, []);
  await phone.context.close();
  await copyFile(join(folder, "baize-server.pem"), join(folder, "proxy.pem"));
});

test("what goes wrong is one sentence", async () => {
  const refused = async (...words) => {
    const { code, stderr } = await run(program, ["serve", "--db", database, "--port", "0", ...words]).catch((error) => error);
    assert.equal(code, 3, stderr);
    assert.equal(stderr.trim().split("\n").length, 1, stderr);
    return stderr;
  };
  const pem = join(folder, "baize-server.pem");
  const other = join(folder, "baize-authority.pem");
  assert.match(await refused("--certificate", join(folder, "none.pem"), "--key", pem), /none\.pem/);
  assert.match(await refused("--certificate", pem, "--key", join(folder, "none.pem")), /none\.pem/);
  assert.match(await refused("--certificate", pem, "--key", other), /belongs to the certificate/);
  assert.match(await refused("--tls", "--name", "bank.example"), /may speak for/);
  assert.match(await refused("--behind-proxy", "--address", "0.0.0.0", "--name", name), /this machine only/);
  assert.match(await refused("--behind-proxy"), /--name/);
  const taken = createServer().listen(0, "127.0.0.1");
  await new Promise((ready) => taken.once("listening", ready));
  assert.match(await refused("--tls", "--address", "127.0.0.1", "--http-port", String(taken.address().port)), /no other program uses/);
  taken.close();
});

test("behind a proxy with the settings that the manual gives", { skip: !(nginx && certutil) && "nginx or certutil is missing" }, async () => {
  const server = await serve("--behind-proxy", "--anyone-may-read-and-write", "--name", name, "--log", "json");
  const manual = await readFile(new URL("../../docs/howto/https.md", import.meta.url), "utf8");
  const lines = /    location \/ \{[\s\S]*?\n    \}\n/.exec(manual)[0].replace("127.0.0.1:8417", `127.0.0.1:${server.port}`);
  const free = createServer().listen(0, "127.0.0.1");
  await new Promise((ready) => free.once("listening", ready));
  const port = free.address().port;
  await new Promise((closed) => free.close(closed));
  const pem = join(folder, "proxy.pem"); // of the first test's authority, for its name
  const settings = join(folder, "nginx.conf");
  await writeFile(settings, `daemon off; pid ${folder}/nginx.pid; error_log ${folder}/nginx.log;
events {}
http { access_log off; client_body_temp_path ${folder}/body; proxy_temp_path ${folder}/proxy; fastcgi_temp_path ${folder}/f; uwsgi_temp_path ${folder}/u; scgi_temp_path ${folder}/s;
server { listen 127.0.0.1:${port} ssl; ssl_certificate ${pem}; ssl_certificate_key ${pem};
${lines} } }`);
  running.push(spawn("/usr/sbin/nginx", ["-c", settings, "-p", folder], { stdio: "ignore" }));
  for (let i = 0; i < 50 && !here(`${folder}/nginx.pid`); i += 1) await new Promise((wait) => setTimeout(wait, 100));
  phone = await trusting("behind", join(folder, "authority.crt"));
  await firstTime(phone, { url: `https://${name}:${port}` });
  const status = await phone.page.evaluate(async () => (await fetch("/api/v1/clubs/larch_hollow/entries", { method: "POST", headers: { "Content-Type": "application/json" }, body: "{}" })).status);
  assert.equal(status, 400, "its own page may send: the Host came through");
  const spoof = await fetch(`http://127.0.0.1:${server.port}/healthz`, { headers: { "X-Forwarded-For": "198.51.100.9, 203.0.113.7" } });
  assert.equal(spoof.status, 200);
  for (let i = 0; i < 50 && !server.log.includes("/healthz"); i += 1) await new Promise((wait) => setTimeout(wait, 100));
  const log = server.log.trim().split("\n").map((line) => JSON.parse(line));
  assert.ok(log.some((line) => line.path === "/healthz" && line.address === "203.0.113.7"), server.log);
  assert.ok(log.some((line) => line.route === "/api/v1/clubs/{club}/entries" && line.status === 400 && line.id), server.log);
  assert.deepEqual(phone.wrong.filter((one) => !/400/.test(one)), []);
});
