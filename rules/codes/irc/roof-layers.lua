---@type plumbrule.Rule
return {
  title = "Layers of roof covering",
  cite = "R908.3; NDS 12.2, 12.3 (thread in the member)",
  about = "roof_plane",
  applies = function(plane) return plane.modules:count() > 0 end,
  check = function(plane, book)
    shall.not_exceed("Layers of roof covering", plane.layers, book.roof_layers)
    if plane.layers > 1 then
      -- A mount is detailed over one layer: each further one takes its thickness from the thread in the wood.
      for _, attachment in ipairs(plane.attachments) do
        if attachment.model.fastener:is("lag screw", "wood screw", "structural screw") then
          review(format("The fasteners of %s go through %d layers of covering: show that their thread in the member is as long as it is taken for", attachment:called(), plane.layers))
          break
        end
      end
    end
  end,
  remedy = "Strip the roof before the array goes on.",
}
