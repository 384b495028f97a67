// Violations that the accessibility checker finds, each with the first elements at fault.
({only}) =>
  axe.run({runOnly: only}).then(({violations}) =>
    violations.map(({id, help, nodes}) =>
      `${id}: ${help} (${nodes.length}) ${nodes.slice(0, 3).map((node) => node.html.slice(0, 120)).join(" | ")}`,
    ),
  )
