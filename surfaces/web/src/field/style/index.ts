import "../../styles/font.css";
import "./ground.css";
import "./capture.css";
import "./forms.css";
