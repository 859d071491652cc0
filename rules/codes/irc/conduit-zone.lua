---@type plumbrule.Rule
return {
  title = "Conduit near ridge, hip or valley",
  cite = "conduit_ridge_distance, as the town sets it",
  about = "circuit",
  applies = function(circuit, book) return not same(book.conduit_ridge_distance, 0 * inch) and circuit.on_roof end,
  check = function(circuit, book)
    shall.be_at_least("Conduit to the nearest ridge, hip or valley", circuit.ridge_distance, book.conduit_ridge_distance, inch)
  end,
  remedy = "Take the conduit down to the eave, below the modules, rather than along the ridge.",
}
