---@type plumbrule.Rule
return {
  title = "Disconnect in the utility's reach",
  cite = "Sallow Point sheet 5",
  about = "design",
  applies = function(design) return design.modules:count() > 0 end,
  check = function(design, book)
    local switches = 0
    for _, disconnect in ipairs(design.disconnects) do
      if disconnect.role:is("utility") then
        switches = switches + 1
        shall.be("It can be locked open", disconnect.lockable)
        shall.be("Its open contacts are visible", disconnect.visible_open)
        shall.be("It is readily accessible", disconnect.readily_accessible)
        shall.be("It is outside", disconnect.location:is("outside wall", "ground"))
        shall.not_exceed("Its distance from the meter", disconnect.distance_to_meter, book.utility_disconnect_distance)
      end
    end
    shall.be_more_than("Disconnects for the utility", switches, 0)
    if switches > 0 then
      for _, inverter in ipairs(design.inverters) do
        if inverter.status:is("new") then shall.be(format("One of them opens %s", inverter:called()), inverter:opened_by("utility")) end
      end
      for _, branch in ipairs(design.branches) do
        shall.be(format("One of them opens %s", branch:called()), branch:opened_by("utility"))
      end
    end
  end,
  remedy = "Put a lockable switch with visible contacts outside, beside the meter.",
}
