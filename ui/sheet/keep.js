(function () {
  "use strict";
  var name = "washeve sheet " + document.documentElement.dataset.keep;
  var inputs = document.querySelectorAll("input");
  var kept;
  try {
    kept = JSON.parse(window.localStorage.getItem(name)) || {};
  } catch (_) {
    return;
  }
  function keep() {
    try {
      window.localStorage.setItem(name, JSON.stringify(kept));
    } catch (_) {
      // No room or not allowed: the sheet works as paper does.
    }
  }
  function show(input) {
    if (input.type === "checkbox") {
      input.checked = kept[input.id] === true;
    } else {
      input.value = typeof kept[input.id] === "string" ? kept[input.id] : "";
    }
  }
  inputs.forEach(function (input) {
    show(input);
    input.addEventListener("input", function () {
      kept[input.id] = input.type === "checkbox" ? input.checked : input.value;
      keep();
    });
  });
  var clear = document.getElementById("clear");
  clear.hidden = false;
  clear.addEventListener("click", function (event) {
    if (event.target.tagName === "BUTTON" && window.confirm("Clear all ticks and notes on this sheet?")) {
      kept = {};
      keep();
      inputs.forEach(show);
    }
  });
})();
