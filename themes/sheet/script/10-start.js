/* sheet: the one script. It helps where it can; nothing on the sheets needs it.
   All files of this folder become one function, in the order of their names. */
const all = (query, root) => Array.from((root || document).querySelectorAll(query));
const one = (id) => document.getElementById(id);
const guide = document.querySelector("main[data-guide]");
const words = {};
all("[data-words] > [data-key]").forEach((el) => {
  words[el.dataset.key] = el.textContent;
});
const plural = (key, count) =>
  words[key + (count === 0 ? ".zero" : "")] ||
  words[key + "." + new Intl.PluralRules(document.documentElement.lang).select(count)] ||
  words[key + ".other"] ||
  words[key];
const say = (key, values) =>
  ((values && "count" in values ? plural(key, values.count) : words[key]) || key).replace(
    /\{(\w+)\}/g,
    (whole, name) => (values && name in values ? values[name] : whole),
  );
