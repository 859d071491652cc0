local function outside_of_role(design, role)
  local count = 0
  for _, disconnect in ipairs(design.disconnects) do
    if disconnect.role:is(role) and disconnect.location:is("outside wall", "ground") then count = count + 1 end
  end
  return count
end

-- What it says it is, against what the design shows outside.
local function tells_what_it_is(design, text)
  if string.contains(text, "NOT SERVICE EQUIPMENT") then
    if outside_of_role(design, "emergency") < 1 and outside_of_role(design, "service") > 0 then
      shall.be("It says NOT SERVICE EQUIPMENT of one that is not the service disconnect", false)
    end
  elseif string.contains(text, "SERVICE DISCONNECT") then
    if outside_of_role(design, "service") < 1 then
      shall.be("It says SERVICE DISCONNECT of a service disconnect that is outside", false)
    end
  else
    shall.be("It says whether it is the service disconnect (SERVICE DISCONNECT) or not (NOT SERVICE EQUIPMENT)", false)
  end
end

-- A label at the meter is at the disconnect where that stands there.
local function stands_at_the_meter(design, book)
  local nearest
  for _, disconnect in ipairs(design.disconnects) do
    if disconnect.role:is("service", "emergency") and disconnect.location:is("outside wall", "ground") then
      nearest = nearest and smallest(nearest, disconnect.distance_to_meter) or disconnect.distance_to_meter
    end
  end
  if nearest and nearest > book.beside_meter then
    review(format("The label is told to be at the meter, and the nearest disconnect outside to be %s from it: the designer tells where both are", nearest))
  end
end

---@type plumbrule.Rule
-- From memory: 2020 has the words, 2023 color and size, too. That one that is not the service disconnect says so is
-- published by trade forums.
return {
  title = "Label: emergency disconnect",
  cite = { ["2017"] = "(none)", ["2020"] = "230.85", ["2023"] = "230.85(E)" },
  about = "design",
  applies = function(design, book)
    return not same(book:edition("nec"), "2017") and design.service:is_renewed()
      and design.service.emergency_disconnect
  end,
  check = function(design, book)
    local labels = 0
    for _, label in ipairs(design.labels) do
      if label.kind:is("emergency disconnect") then
        labels = labels + 1
        shall.be("It says EMERGENCY DISCONNECT", string.contains(string.upper(label.text), "EMERGENCY DISCONNECT"))
        tells_what_it_is(design, string.upper(label.text))
        shall.be("At the disconnect outside", label.place:is("meter", "service equipment"))
        if label.place:is("meter") then stands_at_the_meter(design, book) end
        if same(book:edition("nec"), "2023") then
          shall.be_at_least("Height of its letters", label.letter_height, book.emergency_letters)
          shall.be("White on red", label.color:is("white on red"))
        end
      end
    end
    shall.be_more_than("Labels of this kind on the list", labels, 0)
  end,
  remedy = "Mark the disconnect outside: EMERGENCY DISCONNECT, and SERVICE DISCONNECT or NOT SERVICE EQUIPMENT, as it is.",
}
