// The map of the keys, on ? or from the foot of every page. Letters work only outside of fields, and can be switched off for those
// who speak to their screen.
(function () {
  "use strict";
  var OFF = "afterlength-no-letters";
  var GO = { t: "/", i: "/instruments", s: "/shelf", r: "/receive" };
  var MAP = [["?", "this map"], ["t", "Today"], ["i", "instruments"], ["s", "shelf"], ["r", "receive an instrument"],
    ["/", "find an owner, an instrument, words of a finding"], ["Tab", "the next link, field or handle; Shift + Tab the one before"],
    ["Enter", "follow the link, press the button"], ["Space", "tick, or press the button"],
    ["↑ ↓ ← →", "move the handle taken hold of on a drawing; Page Up and Page Down in large steps"], ["Esc", "close this map"]];
  var map = null;

  function letters() { return localStorage.getItem(OFF) !== "yes"; }

  function made() {
    var dialog = document.createElement("dialog"), head = document.createElement("h2"), list = document.createElement("dl");
    dialog.id = "keys";
    dialog.setAttribute("aria-labelledby", "keys-head");
    head.id = "keys-head";
    head.textContent = "Keys";
    MAP.forEach(function (pair) {
      var name = document.createElement("dt"), key = document.createElement("kbd"), what = document.createElement("dd");
      key.textContent = pair[0];
      name.appendChild(key);
      what.textContent = pair[1];
      list.append(name, what);
    });
    var label = document.createElement("label"), tick = document.createElement("input"), close = document.createElement("button");
    tick.type = "checkbox";
    tick.checked = letters();
    tick.addEventListener("change", function () { localStorage.setItem(OFF, tick.checked ? "no" : "yes"); });
    label.className = "option";
    label.append(tick, " Single letters work on this screen");
    close.type = "button";
    close.className = "small";
    close.textContent = "Close";
    close.addEventListener("click", function () { dialog.close(); });
    dialog.append(head, list, label, close);
    document.body.appendChild(dialog);
    return dialog;
  }

  function open() {
    map = map || made();
    if (!map.open) { map.showModal(); }
  }

  function typing(target) { return target.closest && target.closest("input, textarea, select, [contenteditable], dialog"); }

  document.addEventListener("keydown", function (event) {
    if (event.ctrlKey || event.metaKey || event.altKey || event.defaultPrevented || typing(event.target)) { return; }
    if (event.key === "?") { event.preventDefault(); open(); return; }
    if (!letters()) { return; }
    if (event.key === "/") {
      var find = document.getElementById("find");
      if (find) { event.preventDefault(); find.focus(); }
    } else if (GO[event.key]) { event.preventDefault(); location.assign(GO[event.key]); }
  });

  document.addEventListener("DOMContentLoaded", function () {
    var foot = document.querySelector(".foot");
    if (!foot) { return; }
    var line = document.createElement("p"), button = document.createElement("button");
    button.type = "button";
    button.className = "small";
    button.textContent = "Keys (?)";
    button.addEventListener("click", open);
    line.appendChild(button);
    foot.appendChild(line);
  });
})();
