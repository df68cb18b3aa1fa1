(() => {
  const root = document.documentElement;
  const kept = (key) => {
    try {
      return localStorage.getItem(`flat-to-formed.${key}`);
    } catch {}
  };
  const put = (key, allowed, value) => allowed.includes(value) && root.setAttribute(`data-${key}`, value);
  const units = ["inch", "fraction"];
  root.dataset.js = "";
  put("units", units, kept("units"));
  put("look", ["light", "dark", "contrast"], kept("look"));
  if (location.search) {
    root.classList.add("has-query");
    // Units that the link asks for come before the visitor's own, which stay kept.
    const asked = new URLSearchParams(location.search).get("units");
    if (asked !== null) root.dataset.unitsAsked = asked;
    if (asked === "mm") delete root.dataset.units;
    put("units", units, asked);
  }
})();
