// The words of the page /phone. The steps on the phone are written from memory of
// iOS 15 to 18 and Android 11 to 15; docs/howto/https.md says so too.
#include "phone_words.h"

namespace baize::api {

const std::string_view kPhonePage = R"(<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>Baize on a phone</title>
<link rel="stylesheet" href="/phone/style.css">
</head>
<body>
<main>
<h1>Baize on a phone</h1>
<p>The page for the green opens without a network once a phone has opened it at an address that
begins with <b>https</b>.</p>
{trust}
<h2>{open_number}Open the page for the green</h2>
<div class="way">
{open_code}
<div>
<p><a href="{https}/field/">{https}/field/</a></p>
<p>Wait until the page says that it is kept on this phone, then put it on the home screen:</p>
<ul>
<li>iPhone, iPad: the share button, then <i>Add to Home Screen</i>.</li>
<li>Android: the browser's menu, then <i>Add to Home screen</i> or <i>Install</i>.</li>
</ul>
</div>
</div>
<p class="note">What a phone keeps belongs to this very address. Give this computer an address
that does not change (in the router, by the words <i>fixed</i>, <i>static</i> or
<i>reserved</i> address), or phones start anew when it does. Hand in first.</p>
<p class="note">The pages for the desk are at <a href="{https}/">{https}/</a>.</p>
</main>
</body>
</html>
)";

const std::string_view kTrustSteps = R"(<h2>1. Open this page on the phone</h2>
<div class="way">
{phone_code}
<div>
<p>Point the phone's camera at the code, or type <b>{phone}</b>. The phone must be in the same
network as this computer.</p>
</div>
</div>
<h2>2. Take the certificate</h2>
<p>This computer has made an authority of its own. A phone that trusts it knows this server
again, and nobody can stand between them. It can speak for names and addresses of local networks
only, never for a bank or a shop.</p>
<p><a class="button" href="/phone/authority.crt">Take the certificate</a></p>
<p>Its SHA-256 fingerprint. <b>Compare it with the one in the window where Baize was started</b>, and
with the one that the phone shows. Where they differ, stop.</p>
<p class="fingerprint">{fingerprint}</p>
<h2>3. Trust it</h2>
<h3>iPhone, iPad</h3>
<ol>
<li>Take the certificate with Safari and allow it.</li>
<li><i>Settings</i>, <i>Profile Downloaded</i> (or <i>General</i>, <i>VPN &amp; Device
Management</i>), <i>Install</i>. <i>More Details</i> shows the fingerprint.</li>
<li><i>Settings</i>, <i>General</i>, <i>About</i>, at the bottom <i>Certificate Trust Settings</i>:
switch <i>Baize authority</i> on.</li>
</ol>
<h3>Android</h3>
<ol>
<li>Take the certificate; it lies among the downloads.</li>
<li><i>Settings</i>: search for <i>CA certificate</i> (under <i>Security</i>, <i>Encryption and
credentials</i>, <i>Install a certificate</i>). The phone warns of certificates in general; choose
<i>Install anyway</i>, then the file.</li>
<li>The phone asks for a screen lock if it has none.</li>
</ol>
<p class="note">To undo it, remove <i>Baize authority</i> in the same place.</p>
)";

const std::string_view kPhoneStyle = R"(:root { color-scheme: light; }
body { margin: 0; background: #fff; color: #1b1f1c; font: 18px/1.5 system-ui, sans-serif; }
main { max-width: 42rem; margin: 0 auto; padding: 1.25rem 1.25rem 4rem; }
h1 { font-size: 1.8rem; line-height: 1.2; margin: 0.5rem 0 1rem; }
h2 { font-size: 1.25rem; margin: 2.2rem 0 0.6rem; padding-top: 1rem; border-top: 1px solid #c9d2cb; }
h3 { font-size: 1.05rem; margin: 1.2rem 0 0.3rem; }
p, ul, ol { margin: 0 0 0.8rem; }
ul, ol { padding-left: 1.4rem; }
li { margin-bottom: 0.4rem; }
a { color: #14532d; overflow-wrap: anywhere; }
b { overflow-wrap: anywhere; }
.way { display: flex; flex-wrap: wrap; gap: 1.25rem; align-items: flex-start; }
.way > div { flex: 1 1 16rem; }
.way > .code { flex: none; width: 11rem; height: 11rem; border: 1px solid #c9d2cb; }
.button { display: inline-block; min-height: 3rem; line-height: 3rem; padding: 0 1.4rem; border-radius: 0.5rem; background: #14532d; color: #fff; text-decoration: none; }
.button:focus-visible, a:focus-visible { outline: 3px solid #b45309; outline-offset: 2px; }
.fingerprint { font: 1rem/1.6 ui-monospace, monospace; overflow-wrap: anywhere; max-width: 48.4ch; background: #eef3ef; padding: 0.8rem; }
.note { color: #434b45; font-size: 0.95rem; }
)";

} // namespace baize::api
