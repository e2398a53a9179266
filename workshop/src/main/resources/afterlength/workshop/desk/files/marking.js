// Draws marks over a picture: points are set by pointer, finger or keys and written into the form's field, which is all the server
// ever reads; the server answers what they measure. Places are in units of the picture, whatever its size on the screen.
(function () {
  "use strict";
  var SVG = "http://www.w3.org/2000/svg";
  var STEP = 10, NEARER = 1.25, NEAREST = 40, STILL = 5, REACH = { mouse: 9, pen: 12, touch: 24 };

  function marking(form) {
    var sheet = form.querySelector("[data-sheet]"), picture = sheet.querySelector("img"), layer = sheet.querySelector("svg");
    var now = layer.querySelector("[data-now]"), reading = document.getElementById("reading"), where = form.querySelector("[data-where]");
    var field = form.elements.points, box = layer.viewBox.baseVal;
    var points = read(field.value), past = [], ended = false;
    var scale = 1, left = 0, top = 0, whole = 1;
    var cross = { x: box.x + box.width / 2, y: box.y + box.height / 2 }, keyed = false;
    var hands = {}, moved = false, held = -1, before = null;

    function read(text) {
      return text.split("\n").map(function (line) { return line.trim().replace(/,/g, ".").split(/[\s;]+/).map(Number); })
        .filter(function (pair) { return pair.length === 2 && isFinite(pair[0]) && isFinite(pair[1]); })
        .map(function (pair) { return { x: pair[0], y: pair[1] }; });
    }
    function tool() { var chosen = form.querySelector("[name=tool]:checked"); return chosen ? chosen.value : "CRACK"; }
    function rounded(value) { return Math.round(value * 100) / 100; }
    function inside(at) {
      return { x: rounded(Math.min(box.x + box.width, Math.max(box.x, at.x))), y: rounded(Math.min(box.y + box.height, Math.max(box.y, at.y))) };
    }
    function onPicture(clientX, clientY) {
      var frame = sheet.getBoundingClientRect();
      return { x: box.x + (clientX - frame.left - sheet.clientLeft - left) / scale, y: box.y + (clientY - frame.top - sheet.clientTop - top) / scale };
    }

    // What is seen of the picture.
    function place() {
      var width = box.width * scale, height = box.height * scale;
      left = width <= sheet.clientWidth ? (sheet.clientWidth - width) / 2 : Math.min(0, Math.max(sheet.clientWidth - width, left));
      top = height <= sheet.clientHeight ? (sheet.clientHeight - height) / 2 : Math.min(0, Math.max(sheet.clientHeight - height, top));
      [picture, layer].forEach(function (part) {
        part.style.width = width + "px";
        part.style.height = height + "px";
        part.style.left = left + "px";
        part.style.top = top + "px";
      });
      layer.querySelectorAll(".kept circle").forEach(function (dot) { dot.setAttribute("r", 4 / scale); });
      layer.querySelectorAll(".kept text").forEach(function (text) {
        text.setAttribute("font-size", 16 / scale);
        text.setAttribute("dx", 7 / scale);
        text.setAttribute("dy", -7 / scale);
      });
      draw();
    }
    function fit() {
      var most = Math.max(320, 0.74 * window.innerHeight);
      sheet.style.height = Math.min(most, sheet.clientWidth * box.height / box.width) + "px";
      whole = Math.min(sheet.clientWidth / box.width, sheet.clientHeight / box.height);
      scale = whole;
      place();
    }
    function nearer(factor, clientX, clientY) {
      var at = onPicture(clientX, clientY), frame = sheet.getBoundingClientRect();
      scale = Math.min(NEAREST * whole, Math.max(whole, scale * factor));
      left = clientX - frame.left - sheet.clientLeft - (at.x - box.x) * scale;
      top = clientY - frame.top - sheet.clientTop - (at.y - box.y) * scale;
      place();
    }
    function nearerInTheMiddle(factor) {
      var frame = sheet.getBoundingClientRect();
      var x = left + (cross.x - box.x) * scale, y = top + (cross.y - box.y) * scale;
      nearer(factor, frame.left + (keyed ? x : frame.width / 2), frame.top + (keyed ? y : frame.height / 2));
    }

    // The mark being drawn.
    function element(name, attributes) {
      var made = document.createElementNS(SVG, name);
      Object.keys(attributes).forEach(function (key) { made.setAttribute(key, attributes[key]); });
      now.appendChild(made);
      return made;
    }
    function draw() {
      while (now.firstChild) { now.firstChild.remove(); }
      var area = tool() === "WORN" || tool() === "OUTLINE";
      now.setAttribute("class", "now mark-" + tool());
      if (points.length > 1 && tool() !== "POINT") {
        element(area ? "polygon" : "polyline", {
          points: points.map(function (at) { return at.x + "," + at.y; }).join(" "), "vector-effect": "non-scaling-stroke"
        });
      }
      (tool() === "POINT" ? points.slice(-1) : points).forEach(function (at, n) {
        element("circle", { cx: at.x, cy: at.y, r: (n === held ? 9 : 6) / scale, "vector-effect": "non-scaling-stroke" });
      });
      if (keyed && document.activeElement === sheet) {
        var arm = 18 / scale, gap = 4 / scale;
        element("path", {
          "class": "cross", "vector-effect": "non-scaling-stroke",
          d: "M" + (cross.x - arm) + " " + cross.y + "h" + (arm - gap) + "m" + 2 * gap + " 0h" + (arm - gap)
            + "M" + cross.x + " " + (cross.y - arm) + "v" + (arm - gap) + "m0 " + 2 * gap + "v" + (arm - gap)
        });
      }
    }
    function changed() {
      field.value = points.map(function (at) { return at.x + " " + at.y; }).join("\n");
      draw();
      ask();
    }
    function remember() { past.push(points.slice()); }
    function set(at) {
      if (ended) { say("The line is ended: keep it, or undo to go on."); return; }
      remember();
      points = tool() === "POINT" ? [inside(at)] : points.concat([inside(at)]);
      changed();
    }
    function takeBack() { if (points.length) { remember(); ended = false; points = points.slice(0, -1); changed(); } }
    function undo() {
      if (ended) { ended = false; say(""); return; }
      if (past.length) { points = past.pop(); changed(); }
    }
    function end() {
      ended = points.length > 0;
      say(ended ? "Ended." : "");
      if (ended) { document.getElementById("save-mark").focus(); }
    }
    function clear() { if (points.length) { remember(); points = []; ended = false; changed(); } }
    function say(words) { where.textContent = words; }

    // What it measures; one question at a time.
    var asking = false, again = false;
    function ask() {
      if (asking) { again = true; return; }
      asking = true;
      again = false;
      fetch(form.getAttribute("data-reading"), { method: "POST", body: new URLSearchParams(new FormData(form)) })
        .then(function (answer) { return answer.ok ? answer.text() : Promise.reject(answer.status); })
        .then(function (text) { if (reading.innerHTML !== text) { reading.innerHTML = text; } })
        .catch(function () { say("The shop does not answer; what is drawn stays in the form."); })
        .finally(function () { asking = false; if (again) { ask(); } });
    }

    // Pointers: a tap sets a point, a drag moves the point under it or the picture, two fingers come nearer.
    function near(event) {
      var reach = REACH[event.pointerType] || REACH.mouse, best = -1, at = onPicture(event.clientX, event.clientY);
      points.forEach(function (point, n) {
        var apart = Math.hypot(point.x - at.x, point.y - at.y) * scale;
        if (apart <= reach) { reach = apart; best = n; }
      });
      return best;
    }
    function pair() { return Object.keys(hands).map(function (id) { return hands[id]; }); }
    sheet.addEventListener("pointerdown", function (event) {
      if (event.button > 0) { return; }
      sheet.setPointerCapture(event.pointerId);
      if (keyed) { keyed = false; draw(); }
      hands[event.pointerId] = { x: event.clientX, y: event.clientY };
      if (pair().length === 1) { moved = false; held = near(event); before = points.slice(); } else { moved = true; held = -1; }
    });
    sheet.addEventListener("pointermove", function (event) {
      var hand = hands[event.pointerId];
      if (!hand) { return; }
      if (!moved && Math.hypot(event.clientX - hand.x, event.clientY - hand.y) < STILL) { return; }
      var two = pair();
      if (two.length === 2) {
        var was = Math.hypot(two[0].x - two[1].x, two[0].y - two[1].y);
        left += (event.clientX - hand.x) / 2;
        top += (event.clientY - hand.y) / 2;
        hand.x = event.clientX;
        hand.y = event.clientY;
        var is = Math.hypot(two[0].x - two[1].x, two[0].y - two[1].y);
        nearer(was > 0 ? is / was : 1, (two[0].x + two[1].x) / 2, (two[0].y + two[1].y) / 2);
        return;
      }
      if (held >= 0) {
        points[held] = inside(onPicture(event.clientX, event.clientY));
        moved = true;
        changed();
        return;
      }
      moved = true;
      left += event.clientX - hand.x;
      top += event.clientY - hand.y;
      hand.x = event.clientX;
      hand.y = event.clientY;
      place();
    });
    function lifted(event, tapped) {
      if (!hands[event.pointerId]) { return; }
      delete hands[event.pointerId];
      if (held >= 0 && moved) { past.push(before); }
      if (tapped && !moved && held < 0) { set(onPicture(event.clientX, event.clientY)); }
      held = -1;
      draw();
    }
    sheet.addEventListener("pointerup", function (event) { lifted(event, true); });
    sheet.addEventListener("pointercancel", function (event) { lifted(event, false); });
    sheet.addEventListener("wheel", function (event) {
      event.preventDefault();
      nearer(event.deltaY < 0 ? NEARER : 1 / NEARER, event.clientX, event.clientY);
    }, { passive: false });

    // Keys.
    function move(right, down, fine) {
      var step = (fine ? 1 : STEP) / scale;
      cross = inside({ x: cross.x + right * step, y: cross.y + down * step });
      var x = left + (cross.x - box.x) * scale, y = top + (cross.y - box.y) * scale, margin = 30;
      left += Math.max(0, margin - x) - Math.max(0, x - sheet.clientWidth + margin);
      top += Math.max(0, margin - y) - Math.max(0, y - sheet.clientHeight + margin);
      say("Cross-hair at " + Math.round(cross.x) + " across, " + Math.round(cross.y) + " down.");
      place();
    }
    var byKey = {
      ArrowLeft: function (fine) { move(-1, 0, fine); }, ArrowRight: function (fine) { move(1, 0, fine); },
      ArrowUp: function (fine) { move(0, -1, fine); }, ArrowDown: function (fine) { move(0, 1, fine); },
      Enter: function () { set(cross); }, Backspace: takeBack, Escape: end,
      "+": function () { nearerInTheMiddle(NEARER); }, "-": function () { nearerInTheMiddle(1 / NEARER); }, "0": fit
    };
    sheet.addEventListener("keydown", function (event) {
      var does = byKey[event.key];
      if (!does || event.ctrlKey || event.metaKey || event.altKey) { return; }
      event.preventDefault();
      keyed = true;
      does(event.shiftKey);
    });
    document.addEventListener("keydown", function (event) {
      var typing = event.target.matches && event.target.matches("input[type=text], input[type=search], textarea");
      if ((event.ctrlKey || event.metaKey) && event.key.toLowerCase() === "z" && !typing) {
        event.preventDefault();
        undo();
      }
    });
    sheet.addEventListener("focus", function () { keyed = keyed || sheet.matches(":focus-visible"); draw(); });
    sheet.addEventListener("blur", draw);

    var byButton = {
      undo: undo, end: end, clear: clear, whole: fit,
      "in": function () { nearerInTheMiddle(NEARER); }, out: function () { nearerInTheMiddle(1 / NEARER); }
    };
    form.querySelectorAll("[data-do]").forEach(function (button) {
      button.addEventListener("click", function () { byButton[button.getAttribute("data-do")](); });
    });
    form.addEventListener("change", function (event) {
      if (event.target === field) { remember(); points = read(field.value); }
      if (event.target.name === "tool") { ended = false; }
      draw();
      ask();
    });
    form.querySelector("#f-height_mm") && form.querySelector("#f-height_mm").addEventListener("input", ask);
    document.body.addEventListener("htmx:afterSettle", ask);

    form.querySelectorAll("[data-needs-script]").forEach(function (part) { part.hidden = false; });
    sheet.classList.add("live");
    sheet.tabIndex = 0;
    sheet.setAttribute("role", "application");
    sheet.setAttribute("aria-label", "Picture to mark: " + picture.alt);
    sheet.setAttribute("aria-describedby", "keys");
    var breadth = 0;
    new ResizeObserver(function () { if (sheet.clientWidth !== breadth) { breadth = sheet.clientWidth; fit(); } }).observe(sheet);
    fit();
    draw();
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll("form[data-marking]").forEach(marking);
  });
})();
