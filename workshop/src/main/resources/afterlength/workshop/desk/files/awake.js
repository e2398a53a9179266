// Keeps the screen awake while a wait of less than four hours runs on this page, and only then; says so, and says when it cannot.
(function () {
  "use strict";
  var LONGEST_S = 4 * 3600, OFF = "afterlength-may-sleep";
  var lock = null, place = null, words = null, button = null, cannot = false;

  function running() {
    return Array.from(document.querySelectorAll("[role=timer][data-left]")).some(function (timer) {
      return !timer.classList.contains("due") && Number(timer.getAttribute("data-left")) < LONGEST_S;
    });
  }
  function off() { return localStorage.getItem(OFF) === "yes"; }

  function say() {
    place.hidden = !running();
    button.hidden = cannot;
    words.textContent = cannot ? "This browser does not keep the screen awake. Set the screen of the tablet itself to stay on longer."
      : lock ? "The screen stays awake while a timer runs." : off() ? "The screen may go dark; the timer runs on." : "The screen is not kept awake just now.";
    button.textContent = off() ? "Keep the screen awake" : "Let the screen sleep";
  }

  function hold() {
    var wanted = running() && !off() && document.visibilityState === "visible";
    if (wanted && !lock && !cannot) {
      if (!("wakeLock" in navigator)) { cannot = true; say(); return; }
      navigator.wakeLock.request("screen").then(function (held) {
        lock = held;
        held.addEventListener("release", function () { if (lock === held) { lock = null; } say(); });
        say();
        if (!running() || off()) { hold(); }
      }, function () { cannot = document.visibilityState === "visible"; say(); });
    }
    if (!wanted && lock) { var held = lock; lock = null; held.release(); }
    say();
  }

  document.addEventListener("DOMContentLoaded", function () {
    var timers = document.querySelectorAll("[data-timers]");
    if (!timers.length) { return; }
    place = document.createElement("p");
    words = document.createElement("span");
    button = document.createElement("button");
    place.id = "awake";
    place.className = "do";
    words.setAttribute("role", "status");
    button.type = "button";
    button.className = "small";
    button.addEventListener("click", function () { localStorage.setItem(OFF, off() ? "no" : "yes"); hold(); });
    place.append(words, button);
    timers[timers.length - 1].after(place);
    hold();
    setInterval(hold, 2000);
  });
  document.addEventListener("visibilitychange", function () { if (place) { hold(); } });
})();
