/* Whatever in the page could run, load or lead outside and was not put there by the theme. */
() => {
  const found = [];
  const link = /^(?:https?:|mailto:|#|$|[^:/?#\\]+(?:[/?#]|$)|\.{1,2}\/)/i;
  const bad = "iframe,frame,frameset,object,embed,applet,base,form,math,foreignObject,animate,set,handler,template,marquee,isindex,keygen,xss,slot,noembed,xmp,plaintext,image";
  for (const node of document.querySelectorAll("*")) {
    const said = node.outerHTML.slice(0, 160);
    if (node.matches(bad) && !node.matches("form#search")) found.push("element: " + said);
    if (node.localName === "script" && !/^(\.\.\/)*sheet\/sheet\.js$/.test(node.getAttribute("src") || "") && !node.closest("head")) found.push("script: " + said);
    if (node.localName === "style" && !node.closest("head")) found.push("style: " + said);
    if (node.localName === "meta" && /refresh|cookie/i.test(node.httpEquiv || "")) found.push("meta: " + said);
    for (const { name, value } of node.attributes) {
      if (/^on/i.test(name)) found.push("handler: " + said);
      if (/^(?:formaction|ping|srcdoc|background|action|popovertarget)$/i.test(name)) found.push("attribute: " + said);
      if (/^(?:xlink:)?href$/i.test(name) && node.localName === "a" && !link.test(value)) found.push("link: " + said);
      if (/^(?:src|poster)$/i.test(name) && /^(?:javascript|vbscript|https?|\/\/)/i.test(value)) found.push("source: " + said);
    }
  }
  return { found, ran: window.__ran || [], words: document.documentElement.textContent.split("alert(1)").length - 1 };
}
