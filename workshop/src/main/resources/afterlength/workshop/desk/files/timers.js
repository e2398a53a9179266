// Counts down what dries. The end of each wait comes from the diary with the page, so a closed tab loses nothing; seconds are
// counted from the loading of the page, so a tablet whose clock is wrong still counts right. Works without this file, too.
(function () {
  "use strict";
  // A page kept for when the machine does not answer counts from the moment it was true.
  var kept = document.documentElement.getAttribute("data-kept");
  var loaded = kept ? Date.parse(kept) : Date.now();
  var STALE_MS = 5 * 60 * 1000;
  var AGAIN_MS = 60 * 1000;
  var sound = null;
  var rang = 0;

  function words(seconds) {
    var minutes = Math.ceil(seconds / 60);
    if (minutes >= 72 * 60) { return (minutes / 1440).toFixed(1) + " days left"; }
    if (minutes < 60) { return minutes + " min left"; }
    var rest = minutes % 60;
    return Math.floor(minutes / 60) + " h" + (rest ? " " + String(rest).padStart(2, "0") : "") + " left";
  }

  function ring() {
    if (!sound || sound.state !== "running" || Date.now() - rang < AGAIN_MS) { return; }
    rang = Date.now();
    [0, 0.35, 0.7].forEach(function (after) {
      var tone = sound.createOscillator(), loud = sound.createGain(), at = sound.currentTime + after;
      tone.frequency.value = 660;
      loud.gain.setValueAtTime(0, at);
      loud.gain.linearRampToValueAtTime(0.25, at + 0.02);
      loud.gain.linearRampToValueAtTime(0, at + 0.28);
      tone.connect(loud).connect(sound.destination);
      tone.start(at);
      tone.stop(at + 0.3);
    });
  }

  function due(timer) {
    if (timer.classList.contains("due")) { return; }
    timer.classList.add("due");
    timer.setAttribute("role", "alert");
    timer.textContent = "The usual wait is over: check it. ";
    var look = document.createElement("a");
    look.href = "/";
    look.textContent = "Look at Today again";
    timer.appendChild(look);
    document.title = "Due: " + timer.getAttribute("data-name");
  }

  function tick(timers) {
    var gone = (Date.now() - loaded) / 1000, anyDue = false;
    timers.forEach(function (timer) {
      var left = Number(timer.getAttribute("data-left")) - gone;
      if (left <= 0) { anyDue = true; due(timer); } else { timer.textContent = words(left); }
    });
    if (anyDue) { ring(); }
  }

  function offerSound(place) {
    var button = place.querySelector("button");
    place.hidden = false;
    button.addEventListener("click", function () {
      sound = sound || new AudioContext();
      sound.resume().then(function () {
        rang = 0;
        ring();
        button.textContent = "Sound test again; it is on while this page stays open";
      });
    });
  }

  // The sound can be tried on a day without a timer, too.
  function soundPlace() {
    var place = document.createElement("p"), button = document.createElement("button");
    place.className = "do";
    place.hidden = true;
    button.type = "button";
    button.className = "small";
    button.textContent = "Try the sound of a timer";
    place.appendChild(button);
    document.getElementById("page").appendChild(place);
    return place;
  }

  document.addEventListener("DOMContentLoaded", function () {
    var timers = document.querySelectorAll("[data-left]");
    var place = document.querySelector("[data-sound]");
    if (!place && document.getElementById("page")) { place = soundPlace(); }
    if (place && window.AudioContext) { offerSound(place); }
    if (timers.length) { tick(timers); setInterval(function () { tick(timers); }, 1000); }
  });
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden && !sound && Date.now() - loaded > STALE_MS) { location.replace("/"); }
  });
})();
