// Small helps that the pages work without: after a refused form the list of problems is read first, and long uploads say so.
(function () {
  "use strict";
  document.addEventListener("DOMContentLoaded", function () {
    var problems = document.querySelector(".problems");
    if (problems) { problems.focus(); }
    document.querySelectorAll("form[data-working]").forEach(function (form) {
      form.addEventListener("submit", function () {
        var place = form.querySelector("[data-progress]");
        if (place) { place.textContent = form.getAttribute("data-working"); }
      });
    });
  });
})();

// The set-up bench: whatever is typed, or dragged on the drawing, goes to the server at once, one request at a time, and what comes
// back is laid into its places. A handle writes into the field it stands for, so the fields always say the same as the drawing.
(function () {
  "use strict";
  var FAR = 10;

  function bench(form) {
    var asking = false, again = false, hold = null, shown = {};

    function ask() {
      if (asking) { again = true; return; }
      asking = true;
      again = false;
      var body = new URLSearchParams(new FormData(form));
      if (hold) { body.set("moving", "yes"); }
      fetch(form.getAttribute("data-bench"), { method: "POST", body: body })
        .then(function (answer) { return answer.ok ? answer.text() : Promise.reject(answer.status); })
        .then(lay)
        .catch(function () { form.classList.add("behind"); })
        .finally(function () { asking = false; if (again) { ask(); } });
    }

    function lay(text) {
      var answer = new DOMParser().parseFromString(text, "text/html");
      var focused = document.activeElement ? document.activeElement.id : "";
      answer.querySelectorAll("[data-live]").forEach(function (part) {
        var name = part.getAttribute("data-live"), html = part.innerHTML;
        var place = document.getElementById("live-" + name) || document.getElementById(name);
        if (place && shown[name] !== html) { shown[name] = html; place.innerHTML = html; }
      });
      form.classList.toggle("behind", !answer.querySelector("[data-live=front]"));
      if (focused.indexOf("handle-") === 0 && document.getElementById(focused)) { document.getElementById(focused).focus(); }
    }

    function number(text) { return parseFloat(String(text).replace(",", ".").replace("−", "-")); }

    function write(handle, value) {
      var step = number(handle.getAttribute("data-step"));
      var low = number(handle.getAttribute("aria-valuemin")), high = number(handle.getAttribute("aria-valuemax"));
      var rounded = Math.round(Math.min(high, Math.max(low, value)) / step) * step;
      var text = String(Number(rounded.toFixed(3)));
      var field = form.elements[handle.getAttribute("data-field")];
      var point = Number(handle.getAttribute("data-point"));
      if (point >= 0) {
        var points = form.querySelector("[data-points]").getAttribute("data-points").split("|");
        points[point] = points[point].split(" ")[0] + " " + text;
        text = points.join("\n").replace(/ /g, "; ");
      }
      if (field.value === text) { return; }
      field.value = text;
      handle.setAttribute("aria-valuenow", rounded);
      ask();
    }

    // Pixels to the millimetre of the drawing as it stands under the hand.
    function scale(handle) { return handle.ownerSVGElement.getScreenCTM().d; }

    form.addEventListener("pointerdown", function (event) {
      var handle = event.target.closest ? event.target.closest(".handle") : null;
      if (!handle || event.button > 0) { return; }
      event.preventDefault();
      handle.focus({ preventScroll: true });
      hold = { id: handle.id, y: event.clientY, value: number(handle.getAttribute("aria-valuenow")), pointer: event.pointerId };
      document.getElementById("live-front").setPointerCapture(event.pointerId);
    });
    form.addEventListener("pointermove", function (event) {
      var handle = hold && hold.pointer === event.pointerId ? document.getElementById(hold.id) : null;
      if (!handle) { return; }
      var up = (hold.y - event.clientY) / scale(handle);
      hold.y = event.clientY;
      hold.value += up * number(handle.getAttribute("data-gain"));
      write(handle, hold.value);
    });
    ["pointerup", "pointercancel"].forEach(function (name) {
      form.addEventListener(name, function () { if (hold) { hold = null; ask(); } });
    });
    form.addEventListener("keydown", function (event) {
      var handle = event.target.closest ? event.target.closest(".handle") : null;
      var steps = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: FAR, PageDown: -FAR }[event.key];
      if (!handle || !steps) { return; }
      event.preventDefault();
      var step = number(handle.getAttribute("data-step"));
      write(handle, number(handle.getAttribute("aria-valuenow")) + steps * step);
    });
    form.addEventListener("input", ask);
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll("form[data-bench]").forEach(bench);
  });
})();
