// Start and Done, and what happens to the glue pot, while the workshop's machine does not answer: the tap is kept on this screen
// with its moment and a key, marked where it was made, and sent when the machine answers again, in the order of the taps. By its
// key the machine takes it once, however often it is sent. Without this file, or without storage, the forms go the usual way.
(function () {
  "use strict";
  var PLACE = "afterlength-waiting", AGAIN_MS = 4000, PATIENCE_MS = 8000;
  var TAPS = /^\/(steps\/\d+\/(start|done)|shelf\/glue\/\d+\/events)$/;
  var kept = document.documentElement.getAttribute("data-kept");
  var again = null;

  function list() {
    try { return JSON.parse(localStorage.getItem(PLACE) || "[]"); } catch (broken) { return []; }
  }
  function store(all) { localStorage.setItem(PLACE, JSON.stringify(all)); show(); }
  function without(key) { store(list().filter(function (tap) { return tap.key !== key; })); }
  function clock(iso) { return new Date(iso).toLocaleTimeString("en-GB", { hour: "2-digit", minute: "2-digit" }); }
  function key() {
    if (crypto.randomUUID) { return crypto.randomUUID(); }
    var bytes = Array.from(crypto.getRandomValues(new Uint8Array(16)), function (b) { return b.toString(16).padStart(2, "0"); }).join("");
    return bytes.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, "$1-$2-$3-$4-$5");
  }

  function send(tap) {
    var stop = new AbortController(), slow = setTimeout(function () { stop.abort(); }, PATIENCE_MS);
    var body = new URLSearchParams(tap.body);
    body.set("sent_key", tap.key);
    body.set("sent_at", tap.at);
    return fetch(tap.action, { method: "POST", body: body, signal: stop.signal, headers: { "Accept": "text/html" } })
      .finally(function () { clearTimeout(slow); });
  }

  // One at a time over all tabs of this screen, the oldest first; the first that gets no answer ends the round.
  function sendAll() {
    return (navigator.locks ? navigator.locks.request(PLACE, round) : round());
  }
  function round() {
    var tap = list().filter(function (one) { return !one.refused; })[0];
    if (!tap) { return Promise.resolve(null); }
    return send(tap).then(function (answer) {
      if (answer.ok) {
        without(tap.key);
        return round().then(function (later) { return later || answer.url; });
      }
      if (answer.status >= 500) { throw new Error("not now"); }
      return refused(tap, answer).then(round);
    });
  }
  function refused(tap, answer) {
    return answer.text().then(function (text) {
      var page = new DOMParser().parseFromString(text, "text/html");
      var words = page.querySelector(".problems, main p");
      var all = list();
      all.forEach(function (one) { if (one.key === tap.key) { one.refused = words ? words.textContent.trim() : "refused (" + answer.status + ")"; } });
      store(all);
    });
  }

  function flush() {
    clearTimeout(again);
    if (!list().some(function (tap) { return !tap.refused; })) { return; }
    sendAll().then(function (place) { if (place) { location.assign(place); } })
      .catch(function () { show(); again = setTimeout(flush, AGAIN_MS); });
  }

  function tapped(event) {
    var form = event.target, action = form.getAttribute("action") || "";
    if (!TAPS.test(action) || event.defaultPrevented) { return; }
    var body = new URLSearchParams(new FormData(form)), button = event.submitter;
    if (button && button.name) { body.set(button.name, button.value); }
    var words = button ? (button.getAttribute("aria-label") || button.textContent).trim() : action;
    try {
      store(list().concat({ key: key(), at: new Date().toISOString(), action: action, body: body.toString(), words: words }));
    } catch (full) { return; }
    event.preventDefault();
    flush();
  }

  function line(tap) {
    var item = document.createElement("li");
    item.textContent = tap.words + ", " + clock(tap.at) + (tap.refused ? ". Not taken: " + tap.refused + " " : "");
    if (tap.refused) {
      var button = document.createElement("button");
      button.type = "button";
      button.className = "small";
      button.textContent = "Take it off this list";
      button.setAttribute("aria-label", "Take off this list: " + tap.words);
      button.addEventListener("click", function () { without(tap.key); });
      item.appendChild(button);
    }
    return item;
  }

  function mark(all) {
    document.querySelectorAll("form[data-waiting]").forEach(function (form) {
      form.removeAttribute("data-waiting");
      form.querySelectorAll(".waits").forEach(function (one) { one.remove(); });
      form.querySelectorAll("button").forEach(function (button) { button.disabled = false; });
    });
    all.filter(function (tap) { return !tap.refused; }).forEach(function (tap) {
      document.querySelectorAll("form[action='" + tap.action + "']").forEach(function (form) {
        form.setAttribute("data-waiting", "");
        form.querySelectorAll("button").forEach(function (button) { button.disabled = true; });
        var words = document.createElement("span");
        words.className = "waits";
        words.textContent = "waiting to be sent";
        form.appendChild(words);
      });
    });
  }

  function show() {
    var all = list(), main = document.getElementById("page"), place = document.getElementById("waiting");
    mark(all);
    if (!main) { return; }
    if (!place) {
      place = document.createElement("div");
      place.id = "waiting";
      place.setAttribute("role", "status");
      main.insertBefore(place, main.firstChild);
    }
    place.textContent = "";
    place.hidden = !kept && !all.length;
    if (kept) {
      var old = document.createElement("p");
      old.textContent = "The workshop’s machine does not answer. This page is as it was at " + clock(kept)
        + "; Start and Done can be tapped and are sent later.";
      place.appendChild(old);
    }
    if (all.length) {
      var head = document.createElement("p"), lines = document.createElement("ul");
      head.textContent = "Kept on this screen, waiting to be sent:";
      all.forEach(function (tap) { lines.appendChild(line(tap)); });
      place.appendChild(head);
      place.appendChild(lines);
    }
  }

  // A kept page looks for the machine and gives way to the true one as soon as it answers.
  function lookForMachine() {
    if (!kept || list().length) { return; }
    fetch("/afterlength.webmanifest", { cache: "no-store" }).then(function (answer) { if (answer.ok) { location.reload(); } })
      .catch(function () { return null; });
  }

  document.addEventListener("submit", tapped);
  window.addEventListener("online", function () { flush(); lookForMachine(); });
  window.addEventListener("storage", function (event) { if (event.key === PLACE) { show(); } });
  document.addEventListener("DOMContentLoaded", function () {
    show();
    flush();
    if (kept) { setInterval(lookForMachine, AGAIN_MS); }
    if ("serviceWorker" in navigator) { navigator.serviceWorker.register("/worker.js").catch(function () { return null; }); }
  });
})();
