# How numbers and lists are written in this language. Two quotes keep a space at an end.
group = ,
decimal = .
list =
    .between = { ", " }
    .last = { ", " }
and =
    .between = { ", " }
    .last = { " and " }
or =
    .between = { ", " }
    .last = { " or " }
semicolon =
    .between = { "; " }
    .last = { "; " }
