(() => {
  const root = document.documentElement;
  const kept = (key) => {
    try {
      return localStorage.getItem(`flat-to-formed.${key}`);
    } catch {}
  };
  const put = (key, allowed) => allowed.includes(kept(key)) && root.setAttribute(`data-${key}`, kept(key));
  root.dataset.js = "";
  put("units", ["inch", "fraction"]);
  put("look", ["light", "dark", "contrast"]);
  if (location.search) root.classList.add("has-query");
})();
