package sheet

import (
	"strings"
	"sync"
)

// letters are the Latin letters and ligatures of Unicode that come apart into plain ones:
// a line each, what they become and then what becomes so. They are those of the blocks
// Latin-1 Supplement to Latin Extended-B, Latin Extended Additional and Alphabetic
// Presentation Forms; the test compares them with golang.org/x/text/unicode/norm, whose
// tables for all scripts are a hundred times as large as this one.
const letters = `
1 ¹
2 ²
3 ³
A ÀÁÂÃÄÅĀĂĄǍǞǠǺȀȂȦḀẠẢẤẦẨẪẬẮẰẲẴẶ
a ªàáâãäåāăąǎǟǡǻȁȃȧḁạảấầẩẫậắằẳẵặ
B ḂḄḆ
b ḃḅḇ
C ÇĆĈĊČḈ
c çćĉċčḉ
D ĎḊḌḎḐḒ
d ďḋḍḏḑḓ
DZ ǄǱ
Dz ǅǲ
dz ǆǳ
E ÈÉÊËĒĔĖĘĚȄȆȨḔḖḘḚḜẸẺẼẾỀỂỄỆ
e èéêëēĕėęěȅȇȩḕḗḙḛḝẹẻẽếềểễệ
F Ḟ
f ḟ
ff ﬀ
ffi ﬃ
ffl ﬄ
fi ﬁ
fl ﬂ
G ĜĞĠĢǦǴḠ
g ĝğġģǧǵḡ
H ĤȞḢḤḦḨḪ
h ĥȟḣḥḧḩḫẖ
I ÌÍÎÏĨĪĬĮİǏȈȊḬḮỈỊ
i ìíîïĩīĭįǐȉȋḭḯỉị
IJ Ĳ
ij ĳ
J Ĵ
j ĵǰ
K ĶǨḰḲḴ
k ķǩḱḳḵ
L ĹĻĽḶḸḺḼ
l ĺļľḷḹḻḽ
LJ Ǉ
Lj ǈ
lj ǉ
M ḾṀṂ
m ḿṁṃ
N ÑŃŅŇǸṄṆṈṊ
n ñńņňǹṅṇṉṋ
NJ Ǌ
Nj ǋ
nj ǌ
O ÒÓÔÕÖŌŎŐƠǑǪǬȌȎȪȬȮȰṌṎṐṒỌỎỐỒỔỖỘỚỜỞỠỢ
o ºòóôõöōŏőơǒǫǭȍȏȫȭȯȱṍṏṑṓọỏốồổỗộớờởỡợ
P ṔṖ
p ṕṗ
R ŔŖŘȐȒṘṚṜṞ
r ŕŗřȑȓṙṛṝṟ
S ŚŜŞŠȘṠṢṤṦṨ
s śŝşšſșṡṣṥṧṩẛ
st ﬅﬆ
T ŢŤȚṪṬṮṰ
t ţťțṫṭṯṱẗ
U ÙÚÛÜŨŪŬŮŰŲƯǓǕǗǙǛȔȖṲṴṶṸṺỤỦỨỪỬỮỰ
u ùúûüũūŭůűųưǔǖǘǚǜȕȗṳṵṷṹṻụủứừửữự
V ṼṾ
v ṽṿ
W ŴẀẂẄẆẈ
w ŵẁẃẅẇẉẘ
X ẊẌ
x ẋẍ
Y ÝŶŸȲẎỲỴỶỸ
y ýÿŷȳẏẙỳỵỷỹ
Z ŹŻŽẐẒẔ
z źżžẑẓẕ
`

// plain finds what a letter becomes.
var plain = sync.OnceValue(func() map[rune]string {
	all := map[rune]string{}
	for line := range strings.Lines(strings.TrimSpace(letters)) {
		becomes, these, _ := strings.Cut(strings.TrimSpace(line), " ")
		for _, r := range these {
			all[r] = becomes
		}
	}
	return all
})
