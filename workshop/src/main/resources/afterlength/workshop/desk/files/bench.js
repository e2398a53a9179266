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
