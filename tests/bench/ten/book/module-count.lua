return {
  title = "Modules in a string",
  cite = "check 7",
  about = "string",
  check = function(string) shall.not_exceed("Modules", string.modules:count(), 10) end,
}
