// Stands between the pages and the network. Everything is asked of the workshop's machine first; only when it does not answer, what
// was seen last is shown, marked with its moment: Today, the work on a visit, the glue pot, and the files they are made of. Changes
// never come through here: the page keeps them itself (waiting.js).
"use strict";
var KEPT = "afterlength-1";
var PATIENCE_MS = 4000;
var FILES = ["/files/notebook.css", "/files/htmx.min.js", "/files/bench.js", "/files/timers.js", "/files/waiting.js", "/files/keys.js",
  "/files/awake.js", "/files/sign.svg", "/fonts/IBMPlexSerif-Regular.ttf", "/fonts/IBMPlexSerif-Italic.ttf", "/fonts/IBMPlexSerif-SemiBold.ttf"];

function keptPage(path) { return path === "/" || /^\/visits\/\d+\/work$/.test(path) || /^\/shelf\/glue(\/\d+)?$/.test(path); }
function keptFile(path) { return path.indexOf("/files/") === 0 || path.indexOf("/fonts/") === 0; }
function name(path) { return new Request(self.location.origin + path); }

self.addEventListener("install", function (event) {
  event.waitUntil(caches.open(KEPT).then(function (kept) {
    return Promise.all(FILES.concat("/").map(function (path) {
      return fetch(path).then(function (answer) { return answer.ok ? keep(kept, path, answer) : null; }).catch(function () { return null; });
    }));
  }).then(function () { return self.skipWaiting(); }));
});

self.addEventListener("activate", function (event) {
  event.waitUntil(caches.keys().then(function (names) {
    return Promise.all(names.filter(function (one) { return one !== KEPT; }).map(function (one) { return caches.delete(one); }));
  }).then(function () { return self.clients.claim(); }));
});

// A page is kept with the moment it was true, so that whoever reads it later knows how old it is.
function keep(kept, path, answer) {
  var type = answer.headers.get("Content-Type") || "";
  if (type.indexOf("text/html") !== 0) { return kept.put(name(path), answer); }
  return answer.text().then(function (text) {
    var marked = text.replace("<html lang=\"en\">", "<html lang=\"en\" data-kept=\"" + new Date().toISOString() + "\">");
    return kept.put(name(path), new Response(marked, { headers: { "Content-Type": type,
      "Content-Security-Policy": answer.headers.get("Content-Security-Policy") || "default-src 'self'" } }));
  });
}

function asked(request, patience) {
  if (!patience) { return fetch(request); }
  return new Promise(function (done, failed) {
    var slow = setTimeout(function () { failed(new Error("slow")); }, PATIENCE_MS);
    fetch(request).then(function (answer) { clearTimeout(slow); done(answer); }, function (lost) { clearTimeout(slow); failed(lost); });
  });
}

function answered(request, path, isPage) {
  return caches.open(KEPT).then(function (kept) {
    return kept.match(name(path)).then(function (old) {
      return asked(request, isPage && old).then(function (answer) {
        if (answer.ok && !answer.redirected && (isPage ? keptPage(path) : keptFile(path))) {
          var copy = answer.clone();
          keep(kept, path, copy).catch(function () { return null; });
        }
        return answer;
      }).catch(function (lost) {
        if (old) { return old; }
        if (isPage) { return away(); }
        throw lost;
      });
    });
  });
}

function away() {
  var page = "<!DOCTYPE html><html lang=\"en\"><head><meta charset=\"utf-8\"><meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">"
    + "<title>No answer</title><link rel=\"stylesheet\" href=\"/files/notebook.css\"></head><body><main id=\"page\"><h1>The workshop’s machine does not answer.</h1>"
    + "<p>This page was not kept on this screen. Today was.</p><p class=\"do\"><a class=\"action first\" href=\"/\">Today</a></p></main></body></html>";
  return new Response(page, { status: 503, headers: { "Content-Type": "text/html; charset=utf-8",
    "Content-Security-Policy": "default-src 'none'; style-src 'self'; font-src 'self'; img-src 'self'" } });
}

self.addEventListener("fetch", function (event) {
  var address = new URL(event.request.url), isPage = event.request.mode === "navigate";
  if (event.request.method !== "GET" || address.origin !== self.location.origin) { return; }
  if (isPage || keptFile(address.pathname)) { event.respondWith(answered(event.request, address.pathname, isPage)); }
});
