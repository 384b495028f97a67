// Violations that the accessibility checker finds, each with the first elements at fault.
({tags}) =>
  axe.run({runOnly: {type: "tag", values: tags}}).then(({violations}) =>
    violations.map(({id, help, nodes}) =>
      `${id}: ${help} (${nodes.length}) ${nodes.slice(0, 3).map((node) => node.html.slice(0, 120)).join(" | ")}`,
    ),
  )
